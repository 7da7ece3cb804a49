#pragma once

#include <memory>
#include <utility>

namespace coutil {

// A value that never changes, shared by all copies: copying costs a pointer. Two are equal when
// their values are.
template <class T>
class Shared {
  public:
    Shared(T value)
        : value_(std::make_shared<const T>(std::move(value))) {}  // NOLINT: is the value

    const T& operator*() const { return *value_; }
    const T* operator->() const { return value_.get(); }
    friend bool operator==(const Shared& a, const Shared& b) {
        return a.value_ == b.value_ || *a.value_ == *b.value_;
    }

  private:
    std::shared_ptr<const T> value_;
};

}  // namespace coutil
