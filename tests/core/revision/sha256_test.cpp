#include "core/revision/sha256.h"

#include <gtest/gtest.h>

namespace coutil {
namespace {

// NIST, "Cryptographic Standards and Guidelines: Examples with Intermediate Values", SHA256.pdf:
// one block and two blocks of FIPS 180-4.
TEST(Sha256, examplesOfTheStandard) {
    EXPECT_EQ(sha256Hex("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256Hex("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
}

// RFC 6234, section 8.5, test 3 of SHA-256: a million times the letter a.
TEST(Sha256, aMillionLetters) {
    EXPECT_EQ(sha256Hex(std::string(1'000'000, 'a')),
              "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

}  // namespace
}  // namespace coutil
