#pragma once

#include <string>
#include <vector>

#include "core/measurements/body.h"
#include "core/problems/problem.h"
#include "core/revision/folio.h"
#include "core/store/drawing_check.h"
#include "core/store/text_formats.h"

namespace coutil {

// What `info --json` prints: client, measurement sets (each as in its own format), garments with
// style and timeline.
[[nodiscard]] std::string writeFolioInfoJson(const Folio& folio);

// Errors that stood when a revision was confirmed: the reason, and under it a line an error.
struct AcceptedErrors {
    int revision = 0;
    std::string text;
};

// What `check` found out about one garment.
struct GarmentCheck {
    std::string garment;
    std::string revision = "pencil";
    std::vector<Problem> problems;
    std::vector<Estimate> estimates;
    std::vector<AcceptedErrors> acceptedErrors{};  // of all its revisions
    std::vector<DrawnPanelCheck> drawing{};        // when one was given
};

// What `check --json` prints; the file has been read, so it is sound.
[[nodiscard]] std::string writeCheckJson(const std::vector<GarmentCheck>& checks,
                                         const SentenceOf& sentence);

}  // namespace coutil
