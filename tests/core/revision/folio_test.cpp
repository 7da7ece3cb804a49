// Finding things in a folio.
#include "core/revision/folio.h"

#include <gtest/gtest.h>

namespace coutil {
namespace {

TEST(Folio, findsSetsByIdAndGarmentsByName) {
    Folio folio;
    for (const std::string id : {"set of May", "set of June"}) {
        folio.measurementSets.emplace_back().id = id;
    }
    for (const std::string name : {"Bodice, act 1", "Bodice, act 2"}) {
        folio.garments.emplace_back().name = name;
    }
    EXPECT_EQ(findMeasurementSet(folio, "set of June"), &folio.measurementSets[1]);
    EXPECT_EQ(findMeasurementSet(folio, "set of July"), nullptr);
    EXPECT_EQ(findGarment(folio, "Bodice, act 1"), &folio.garments[0]);
    EXPECT_EQ(findGarment(folio, "bodice, act 1"), nullptr);
    EXPECT_EQ(findGarment(Folio{}, ""), nullptr);
}

}  // namespace
}  // namespace coutil
