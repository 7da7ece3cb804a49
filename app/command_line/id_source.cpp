#include "app/command_line/id_source.h"

#include <utility>

#include "core/store/uuid.h"

namespace coutil {

IdSource::IdSource(bool isRepeatable, std::string content)
    : isRepeatable_(isRepeatable), content_(std::move(content)) {}

std::string IdSource::idFor(const std::string& kind) const {
    return isRepeatable_ ? derivedUuid(kind + "\n" + content_) : newUuid();
}

std::string IdSource::next(const std::string& kind) {
    return idFor(kind + " " + std::to_string(++count_));
}

}  // namespace coutil
