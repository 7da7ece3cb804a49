#include "core/revision/sha256.h"

#include <array>

#include <sodium/crypto_hash_sha256.h>

namespace coutil {

std::string sha256Hex(std::string_view bytes) {
    std::array<unsigned char, crypto_hash_sha256_BYTES> hash{};
    crypto_hash_sha256(hash.data(), reinterpret_cast<const unsigned char*>(bytes.data()),
                       bytes.size());
    static constexpr std::string_view kDigits = "0123456789abcdef";
    std::string hex;
    hex.reserve(2 * hash.size());
    for (const unsigned char byte : hash) {
        hex.push_back(kDigits[byte >> 4U]);
        hex.push_back(kDigits[byte & 0x0FU]);
    }
    return hex;
}

}  // namespace coutil
