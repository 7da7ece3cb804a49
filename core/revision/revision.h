#pragma once

#include <string>
#include <vector>

#include "core/alterations/alteration.h"
#include "core/measurements/measurement_set.h"
#include "core/pattern/pattern.h"
#include "core/problems/problem.h"

namespace coutil {

// How a revision came about: the block's measurements and style, and every alteration since, in
// order. Kept beside the outlines to be read, compared and replayed; the outlines are the truth.
struct Recipe {
    MeasurementSet measurements;  // as they were, whatever the folio's set says later
    Style style;
    std::vector<Alteration> alterations;

    bool operator==(const Recipe&) const = default;
};

// Everything a confirmed revision says.
struct RevisionContent {
    std::string garment;      // id
    int number = 0;           // 1, 2, ... within its garment
    std::string confirmedOn;  // ISO 8601 date
    std::string confirmedBy;
    std::string note;
    std::string parent;  // digest; empty for the first
    Recipe recipe;
    Pattern pattern;  // every coordinate on the ink grid
    // Errors that stood when it was confirmed, and why the maker did so all the same.
    std::string errorsAccepted;

    bool operator==(const RevisionContent&) const = default;
};

// A revision gone over in ink: never changed again. There is no way to alter one; it is made by
// inkOver() or read by inkRead() (ink.h), which look after the digest.
class Revision {
  public:
    [[nodiscard]] const RevisionContent& content() const { return content_; }
    [[nodiscard]] const std::string& digest() const { return digest_; }  // SHA-256, 64 hex digits
    // The recipe and the outlines as the texts that the digest covers.
    [[nodiscard]] const std::string& recipeText() const { return recipeText_; }
    [[nodiscard]] const std::string& inkText() const { return inkText_; }

    [[nodiscard]] int number() const { return content_.number; }
    [[nodiscard]] const Pattern& pattern() const { return content_.pattern; }
    [[nodiscard]] const Recipe& recipe() const { return content_.recipe; }

    friend bool operator==(const Revision& a, const Revision& b) { return a.digest_ == b.digest_; }

  private:
    friend class RevisionPen;  // ink.cpp
    Revision(RevisionContent content, std::string recipeText, std::string inkText,
             std::string digest)
        : content_(std::move(content)),
          recipeText_(std::move(recipeText)),
          inkText_(std::move(inkText)),
          digest_(std::move(digest)) {}

    RevisionContent content_;
    std::string recipeText_;
    std::string inkText_;
    std::string digest_;
};

}  // namespace coutil
