#include "ui/papers/sewing_pages.h"

#include <algorithm>

#include "ui/papers/page_writer.h"
#include "ui/papers/step_picture.h"

namespace coutil {

namespace {

constexpr double kGapMm = 8;
constexpr double kPictureMm = 40;
constexpr double kTitleMm = letters::kHeading + 1.6;
constexpr double kUnderMm = 5;

}  // namespace

double writeSewingOrder(PageWriter& page, const std::vector<SewingStep>& steps,
                        const Pattern& pattern, const std::vector<Channel>& channels,
                        const SewingFigures& figures, double topMm) {
    const double wide = (page.roomMm() - kGapMm) / 2;
    double y = topMm;
    for (std::size_t first = 0; first < steps.size(); first += 2) {
        const std::size_t after = std::min(first + 2, steps.size());
        std::vector<QString> said;
        double wordsMm = 0;
        for (std::size_t i = first; i < after; ++i) {
            said.push_back(sewingSentence(steps[i], pattern, channels, figures));
            wordsMm = std::max(wordsMm, PageWriter::heightOf(said.back(), wide, letters::kText));
        }
        const double high = kTitleMm + wordsMm + 1 + kPictureMm;
        if (y + high > page.bottomMm()) {
            page.newPage();
            y = page.topMm();
        }
        for (std::size_t i = first; i < after; ++i) {
            const double left = page.leftMm() + (i == first ? 0 : wide + kGapMm);
            page.text(QStringLiteral("%1  %2").arg(i + 1).arg(sewingTitle(steps[i])),
                      {left, y + letters::kHeading}, letters::kHeading, wide);
            page.paragraph(said[i - first], left, y + kTitleMm, wide, letters::kText);
            drawStep(page, steps[i], pattern, channels,
                     {left, y + kTitleMm + wordsMm + 1, wide, kPictureMm});
        }
        y += high + kUnderMm;
    }
    return y;
}

}  // namespace coutil
