#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/alterations/alteration.h"
#include "core/alterations/mark.h"
#include "core/block/style.h"
#include "core/making_up/making_up_choices.h"
#include "core/measurements/measurement_set.h"
#include "core/revision/revision.h"
#include "core/revision/shared_value.h"
#include "core/tracing/tracing_choices.h"
#include "core/units/length.h"

namespace coutil {

// A note or warning the maker has looked at and let stand, with her reason.
struct SetAside {
    std::string code;     // key of the problem code
    std::string subject;  // as in the problem
    std::string panel;
    std::string reason;

    bool operator==(const SetAside&) const = default;
};

// A revision still being worked on. Begins as a block (no parent) or from a confirmed revision, and
// has its own alterations on top.
struct Pencil {
    std::string id;              // UUID
    std::string startedOn;       // ISO 8601 date
    std::string measurementSet;  // id of the set it began with
    Style style;                 // the style it began with
    std::string name{};          // the maker's word for it, where there is more than one
    std::string parent{};        // digest of the revision it began from; empty: a block
    std::vector<Alteration> alterations{};
    std::vector<SetAside> setAside{};

    bool operator==(const Pencil&) const = default;
};

// What is in force at the end of a pencil: the last style (measurement set) its alterations bring,
// else that it began with.
[[nodiscard]] const Style& styleInForce(const Pencil& pencil);
[[nodiscard]] const std::string& measurementSetInForce(const Pencil& pencil);

enum class FittingKind { posted, inPerson };
[[nodiscard]] std::string_view keyOf(FittingKind kind);  // "posted", "in_person"

// One trying-on of one revision's mock-up.
struct Fitting {
    std::string id;      // UUID
    std::string heldOn;  // ISO 8601 date
    FittingKind how = FittingKind::inPerson;
    std::string readBy{};
    std::string revision{};  // digest of the revision tried; empty: the pencil named here
    std::string pencil{};    // id, where an unconfirmed block was tried
    std::string note{};
    std::vector<Mark> marks{};
    std::vector<std::string> photos{};  // ids

    bool operator==(const Fitting&) const = default;
};

// A picture of a fitting, kept as a JPEG without metadata.
struct Photo {
    std::string id;  // UUID
    std::string caption;
    std::string addedOn;
    int widthPx = 0;
    int heightPx = 0;
    std::string jpeg;

    bool operator==(const Photo&) const = default;
};

// One block and everything that became of it.
struct Garment {
    std::string id;  // UUID
    std::string name;
    std::string createdOn;                      // ISO 8601 date
    std::vector<Pencil> pencils{};              // in the order they were begun; may be none
    std::vector<Shared<Revision>> revisions{};  // in the order of their numbers; never taken out
    std::vector<Fitting> fittings{};            // in the order of their dates
    MakingUpChoices makingUp{};
    TracingChoices tracing{};

    bool operator==(const Garment&) const = default;
};

// One client: the value a .coutil file holds.
struct Folio {
    std::string id;      // UUID
    std::string client;  // label as the maker writes it
    std::string note;
    LengthUnit unit = LengthUnit::centimetre;     // the maker's unit
    std::vector<MeasurementSet> measurementSets;  // in the order of their dates
    std::vector<Garment> garments;
    std::vector<Shared<Photo>> photos{};

    bool operator==(const Folio&) const = default;
};

[[nodiscard]] const MeasurementSet* findMeasurementSet(const Folio& folio, const std::string& id);
[[nodiscard]] const Garment* findGarment(const Folio& folio,
                                         const std::string& name);  // by name; nullptr if unknown
// In any garment of the folio, since a garment may start from another's revision.
[[nodiscard]] const Revision* findRevision(const Folio& folio, const std::string& digest);
[[nodiscard]] const Revision* findRevision(const Garment& garment, int number);
[[nodiscard]] const Pencil* latestPencil(const Garment& garment);  // nullptr: all is confirmed
[[nodiscard]] const Pencil* findPencil(const Garment& garment, const std::string& id);
[[nodiscard]] const Fitting* findFitting(const Garment& garment, const std::string& id);
[[nodiscard]] const Photo* findPhoto(const Folio& folio, const std::string& id);

}  // namespace coutil
