#pragma once

#include <map>
#include <string>

namespace coutil {

struct MaterialChoices {
    double sparePart = 0.1;  // bought on top of what is needed
    std::string currency{};  // as the maker writes it; only shown
    // Price of one unit of a material (a metre of cloth, tape or lace; a rod, reel, busk or
    // eyelet), by the key of its row in the materials list: materialKey() in materials.h.
    std::map<std::string, double> priceByKey{};
    bool operator==(const MaterialChoices&) const = default;
};

}  // namespace coutil
