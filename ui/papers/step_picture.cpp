#include "ui/papers/step_picture.h"

#include <QTransform>
#include <algorithm>
#include <optional>

#include "ui/papers/page_writer.h"

namespace coutil {

namespace {

constexpr double kSpaceMm = 22;
constexpr double kThinMm = 0.18;
constexpr double kThickMm = 0.8;
constexpr double kMostScale = 0.3;

std::optional<EdgeRole> lineOf(SewingStepKind kind) {
    switch (kind) {
        case SewingStepKind::bindTop:
        case SewingStepKind::turnTop:
            return EdgeRole::top;
        case SewingStepKind::bindBottom:
        case SewingStepKind::turnBottom:
            return EdgeRole::bottom;
        default:
            return std::nullopt;
    }
}

bool isWorkedAt(const SewingStep& step, const Edge& edge) {
    switch (step.kind) {
        case SewingStepKind::joinSeam:
            return edge.name == "seam " + step.seam || edge.name == step.seam;
        case SewingStepKind::setBusk:
        case SewingStepKind::turnFront:
            return edge.role == EdgeRole::opening && edge.name == "centre front";
        case SewingStepKind::turnBack:
        case SewingStepKind::setEyelets:
        case SewingStepKind::lace:
            return edge.role == EdgeRole::opening && edge.name == "centre back";
        case SewingStepKind::cutOut:
            return true;
        default:
            return lineOf(step.kind) == edge.role;
    }
}

class StepPicture {
  public:
    StepPicture(PageWriter& page, const Pattern& pattern, const QRectF& place) : page_(page) {
        Pattern half;
        half.levels = pattern.levels;
        for (std::size_t p = 0; p < pattern.panels.size(); ++p) {
            if (pattern.panels[p].side == PanelSide::right) continue;
            half.panels.push_back(pattern.panels[p]);
            numbers_.push_back(p);
        }
        const auto placements = masterPlacements(half, kSpaceMm);
        Box box;
        for (std::size_t i = 0; i < half.panels.size(); ++i)
            box.include(boundsOf(placed(outlineOf(half.panels[i]), placements[i])));
        if (box.isEmpty()) return;
        scale_ =
            std::min({place.width() / box.widthMm(), place.height() / box.heightMm(), kMostScale});
        const double left = place.left() + (place.width() - box.widthMm() * scale_) / 2;
        for (const Placement& placement : placements) {
            QTransform t;
            t.translate(left + (placement.shift.x() - box.lowest.x()) * scale_,
                        place.top() + (box.highest.y() - placement.shift.y()) * scale_);
            t.scale(scale_, -scale_);
            toPage_.push_back(t);
        }
        panels_ = std::move(half.panels);
    }

    void draw(const SewingStep& step, const std::vector<Channel>& channels) {
        for (std::size_t i = 0; i < panels_.size(); ++i) drawPanel(step, i);
        const bool hasBones = step.kind == SewingStepKind::putBones;
        for (std::size_t c = 0; c < channels.size(); ++c) {
            if (hasBones || std::ranges::find(step.channels, c) != step.channels.end())
                drawChannel(channels[c]);
        }
    }

  private:
    void drawPanel(const SewingStep& step, std::size_t i) {
        const Panel& panel = panels_[i];
        for (const Edge& edge : panel.edges) {
            page_.drawing(edge.path, toPage_[i], isWorkedAt(step, edge) ? kThickMm : kThinMm);
        }
        const bool isTape = step.kind == SewingStepKind::catchTape;
        if (isTape || step.kind == SewingStepKind::markLines) {
            for (const LevelLine& level : panel.levels) {
                if (isTape && level.level != "waist") continue;
                page_.drawing(straightPath(level.front, level.back), toPage_[i],
                              isTape ? kThickMm : kThinMm);
            }
        }
        const Box own = boundsOf(outlineOf(panel));
        const Point middle = (own.lowest + own.highest) / 2;
        page_.text(QString::fromStdString(panel.name),
                   toPage_[i].map(QPointF(middle.x(), own.highest.y() - own.heightMm() * 0.2)),
                   letters::kText, 0, TextAnchor::centre, SheetInk::frame);
    }
    void drawChannel(const Channel& channel) {
        const auto at = std::ranges::find(numbers_, channel.panel);
        if (at == numbers_.end() || channel.line.isEmpty()) return;
        const auto i = static_cast<std::size_t>(at - numbers_.begin());
        page_.drawing(channel.line, toPage_[i], std::max(kThickMm, channel.widthMm * scale_));
    }

    PageWriter& page_;
    std::vector<Panel> panels_;
    std::vector<std::size_t> numbers_;  // of the panels, in the pattern
    std::vector<QTransform> toPage_;
    double scale_ = 1;
};

}  // namespace

void drawStep(PageWriter& page, const SewingStep& step, const Pattern& pattern,
              const std::vector<Channel>& channels, const QRectF& place) {
    StepPicture(page, pattern, place).draw(step, channels);
}

}  // namespace coutil
