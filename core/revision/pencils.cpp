#include "core/revision/pencils.h"

#include <utility>

#include "core/revision/begin_pencil.h"

namespace coutil {
namespace {

Problem problemOf(ProblemCode code, const std::string& subject) {
    Problem problem;
    problem.code = code;
    problem.subject = subject;
    return problem;
}

}  // namespace

Outcome<Folio> pencilBegun(const Folio& folio, std::size_t garment, const std::string& revision,
                           const NewPencil& pencil) {
    const Revision* parent = findRevision(folio, revision);
    if (parent == nullptr) return problemOf(ProblemCode::revisionUnknown, revision);
    Folio next = folio;
    next.garments.at(garment).pencils.push_back(pencilFrom(*parent, pencil));
    return next;
}

Outcome<Folio> pencilCopied(const Folio& folio, std::size_t garment, const std::string& pencil,
                            const NewPencil& copy) {
    const Garment& owner = folio.garments.at(garment);
    const Pencil* original = findPencil(owner, pencil);
    if (original == nullptr) return problemOf(ProblemCode::pencilMissing, owner.name);
    Pencil second = *original;
    second.id = copy.id;
    second.startedOn = copy.startedOn;
    second.name = copy.name;
    Folio next = folio;
    next.garments[garment].pencils.push_back(std::move(second));
    return next;
}

Outcome<Folio> garmentBegun(const Folio& folio, const Garment& emptyGarment,
                            const std::string& revision, const NewPencil& pencil) {
    if (findGarment(folio, emptyGarment.name) != nullptr)
        return problemOf(ProblemCode::garmentTaken, emptyGarment.name);
    Folio next = folio;
    next.garments.push_back(emptyGarment);
    return pencilBegun(next, folio.garments.size(), revision, pencil);
}

Outcome<Folio> pencilRubbedOut(const Folio& folio, std::size_t garment, const std::string& pencil) {
    Folio next = folio;
    Garment& owner = next.garments.at(garment);
    const auto gone =
        std::erase_if(owner.pencils, [&](const Pencil& each) { return each.id == pencil; });
    if (gone == 0) return problemOf(ProblemCode::pencilMissing, owner.name);
    return next;
}

}  // namespace coutil
