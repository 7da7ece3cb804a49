#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/geometry/point.h"

namespace coutil {

// Takes the fields of ink text one after the other. What does not read as it should makes every
// later answer empty or zero; isSound() tells.
class InkFields {
  public:
    explicit InkFields(std::string_view text) : rest_(text) {}

    [[nodiscard]] bool isSound() const { return isSound_; }
    [[nodiscard]] bool isAtEnd() const { return rest_.empty(); }
    [[nodiscard]] bool isAtLineEnd() const { return rest_.empty() || rest_.front() == '\n'; }

    // Exactly these characters, at the place where the text is.
    void take(std::string_view expected);
    // The first word of a line; fields after it are taken with a blank before them.
    [[nodiscard]] std::string_view lineWord();
    [[nodiscard]] std::string_view word();
    [[nodiscard]] std::string name();
    [[nodiscard]] std::int64_t whole();
    [[nodiscard]] double mm();
    [[nodiscard]] std::optional<double> mmOrNone();
    [[nodiscard]] Point point();
    void lineEnd() { take("\n"); }
    void spoil() { isSound_ = false; }

  private:
    std::string_view rest_;
    bool isSound_ = true;
};

}  // namespace coutil
