#pragma once

#include <QCoreApplication>
#include <memory>

namespace coutil {

// What Qt has to have around a command: the user's language, and for drawn text its fonts without a
// display. Qt's own remarks are kept off standard error.
class Surroundings {
  public:
    explicit Surroundings(bool needsLetters);
    Surroundings(const Surroundings&) = delete;
    Surroundings& operator=(const Surroundings&) = delete;

  private:
    char name_[7] = "coutil";
    int count_ = 1;
    char* words_[2] = {name_, nullptr};
    std::unique_ptr<QCoreApplication> app_;
};

}  // namespace coutil
