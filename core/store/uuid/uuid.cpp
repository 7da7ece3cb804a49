#include "core/store/uuid.h"

#include <cstdint>
#include <random>

#include <boost/uuid/name_generator_sha1.hpp>
#include <boost/uuid/uuid.hpp>
#include <boost/uuid/uuid_io.hpp>

namespace coutil {
namespace {

// A random UUID, drawn once; it only has to differ from everyone else's.
constexpr boost::uuids::uuid kNameSpace{{0x14, 0xc1, 0x73, 0xb5, 0xbe, 0xdf, 0x40, 0xc8, 0x80, 0xd2,
                                         0xc8, 0xd8, 0x30, 0xc3, 0x51, 0x2a}};

}  // namespace

std::string newUuid() {
    // On Linux random_device reads the system's own source; nothing is seeded.
    std::random_device random;
    boost::uuids::uuid made{};
    for (std::size_t i = 0; i < made.size(); i += 4) {
        const std::uint32_t bits = random();
        for (std::size_t b = 0; b < 4; ++b)
            made.data[i + b] = static_cast<std::uint8_t>(bits >> (8 * b));
    }
    made.data[6] = static_cast<std::uint8_t>((made.data[6] & 0x0F) | 0x40);  // version 4
    made.data[8] = static_cast<std::uint8_t>((made.data[8] & 0x3F) | 0x80);  // variant of the RFC
    return boost::uuids::to_string(made);
}

std::string derivedUuid(std::string_view text) {
    const boost::uuids::name_generator_sha1 generate(kNameSpace);
    return boost::uuids::to_string(generate(text.data(), text.size()));
}

}  // namespace coutil
