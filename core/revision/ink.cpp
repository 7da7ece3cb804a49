#include "core/revision/ink.h"

#include <string>
#include <utility>

#include "core/revision/sha256.h"

namespace coutil {

// The only one that can make a revision.
class RevisionPen {
  public:
    static Revision drawn(RevisionContent content, std::string recipeText, std::string inkText,
                          std::string digest) {
        return {std::move(content), std::move(recipeText), std::move(inkText), std::move(digest)};
    }
};

namespace {

constexpr int kBitsAByte = 8;

// The length before the bytes: no two contents read alike, however their texts are parted.
void putField(std::string& bytes, std::string_view field) {
    for (unsigned shift = 0; shift < sizeof(std::uint64_t) * kBitsAByte; shift += kBitsAByte)
        bytes.push_back(static_cast<char>((std::uint64_t{field.size()} >> shift) & 0xFFU));
    bytes += field;
}

std::string digestOf(const RevisionContent& content, std::string_view recipeText,
                     std::string_view inkText) {
    std::string bytes;
    bytes.reserve(recipeText.size() + inkText.size() + content.note.size() + 1024);
    putField(bytes, "coutil revision 1");
    putField(bytes, content.garment);
    putField(bytes, std::to_string(content.number));
    putField(bytes, content.confirmedOn);
    putField(bytes, content.confirmedBy);
    putField(bytes, content.note);
    putField(bytes, content.parent);
    putField(bytes, content.errorsAccepted);
    putField(bytes, recipeText);
    putField(bytes, inkText);
    return sha256Hex(bytes);
}

Problem tampered(int number) {
    Problem problem;
    problem.code = ProblemCode::revisionTampered;
    problem.subject = std::to_string(number);
    return problem;
}

}  // namespace

Revision inkOver(RevisionContent content, std::string recipeText) {
    content.pattern = onInkGrid(content.pattern);
    std::string ink = inkText(content.pattern);
    std::string digest = digestOf(content, recipeText, ink);
    return RevisionPen::drawn(std::move(content), std::move(recipeText), std::move(ink),
                              std::move(digest));
}

Outcome<Revision> inkRead(RevisionContent content, std::string recipeText, std::string inkText,
                          const std::string& digest) {
    if (digestOf(content, recipeText, inkText) != digest) return tampered(content.number);
    Outcome<Pattern> pattern = patternFromInkText(inkText);
    if (!pattern) return Outcome<Revision>::failed(std::move(pattern.problems));
    content.pattern = std::move(*pattern);
    return RevisionPen::drawn(std::move(content), std::move(recipeText), std::move(inkText),
                              digest);
}

}  // namespace coutil
