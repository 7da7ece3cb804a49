#pragma once

#include <string>

namespace coutil {

// Makes ids: by chance, or (a run that names its date can be repeated to the byte) from what they
// belong to. `kind` keeps the ids of different records apart.
class IdSource {
  public:
    IdSource(bool isRepeatable, std::string content);

    [[nodiscard]] std::string idFor(const std::string& kind) const;
    // Another one at every call; repeatable in the order of the calls.
    [[nodiscard]] std::string next(const std::string& kind);

  private:
    bool isRepeatable_;
    std::string content_;
    int count_ = 0;
};

}  // namespace coutil
