// What drawings for other programs hold beyond their lines, which check_svg.py and check_dxf.py
// look at: names, text, order.
#include "core/store/interchange.h"

#include <string>

#include <gtest/gtest.h>

#include "core/store/interchange/number_text.h"
#include "core/store/interchange/seven_bit_text.h"
#include "core/store/interchange/svg_writer.h"
#include "tests/core/store/interchange/sample_pieces.h"

namespace coutil {
namespace {

using interchange::blockName;
using interchange::numberText;
using interchange::sevenBitText;
using interchange::xmlText;

TEST(Interchange, numbersAreShortAndTheSameEverywhere) {
    EXPECT_EQ(numberText(12.5, 4), "12.5");
    EXPECT_EQ(numberText(-0.00001, 4), "0");
    EXPECT_EQ(numberText(1.0 / 3, 4), "0.3333");
    EXPECT_EQ(numberText(100, 4), "100");
    EXPECT_EQ(numberText(-7.00005, 4), "-7");
}

TEST(Interchange, textsBecomeSevenBits) {
    EXPECT_EQ(sevenBitText("B\xC3\xBCste \xC3\x9C\xC3\x9F"), "Bueste Uess");
    EXPECT_EQ(sevenBitText("37 \xC2\xBE \xE2\x80\x9Cin\xE2\x80\x9D"), "37 3/4 \"in\"");
    EXPECT_EQ(sevenBitText("\xE4\xB8\xAD\n\xF0\x9F\x98\x80"), "? ?");
    EXPECT_EQ(sevenBitText("\xFF\xC3"), "??");
    EXPECT_EQ(blockName("seam 2-3"), "SEAM_2-3");
    EXPECT_EQ(blockName(""), "_");
    EXPECT_EQ(blockName(std::string(80, 'a')).size(), 31U);
}

TEST(Interchange, xmlHasNoMarkupFromNames) {
    EXPECT_EQ(xmlText("a<b & \"c\">\n\x01"), "a&lt;b &amp; &quot;c&quot;&gt; ");
}

TEST(Interchange, noNameLeavesWhenTheTitleHasNone) {
    const Pattern pattern = samples::corset();
    TracingTitle title = samples::title();
    EXPECT_NE(writePatternSvg(pattern, title).find(title.client), std::string::npos);
    EXPECT_NE(writePatternDxf(pattern, title).find("Kaethe"), std::string::npos);
    title.client.clear();
    EXPECT_EQ(writePatternSvg(pattern, title).find("K\xC3\xA4the"), std::string::npos);
    EXPECT_EQ(writePatternDxf(pattern, title).find("Kaethe"), std::string::npos);
    EXPECT_EQ(writeTracingsSvg(samples::tracings(), title).find("K\xC3\xA4the"), std::string::npos);
    EXPECT_EQ(writeTracingsDxf(samples::tracings(), title).find("Kaethe"), std::string::npos);
}

TEST(Interchange, theSamePatternGivesTheSameBytes) {
    const TracingTitle title = samples::title();
    EXPECT_EQ(writePatternSvg(samples::corset(), title), writePatternSvg(samples::corset(), title));
    EXPECT_EQ(writeTracingsDxf(samples::tracings(), title),
              writeTracingsDxf(samples::tracings(), title));
}

TEST(Interchange, anEmptyPatternIsStillAFile) {
    EXPECT_NE(writePatternSvg({}, {}).find("</svg>"), std::string::npos);
    EXPECT_NE(writePatternDxf({}, {}).find("EOF"), std::string::npos);
    EXPECT_NE(writeTracingsSvg({}, {}).find("</svg>"), std::string::npos);
}

}  // namespace
}  // namespace coutil
