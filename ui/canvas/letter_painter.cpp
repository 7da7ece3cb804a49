#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <vector>

#include "ui/canvas/ruler.h"
#include "ui/canvas/scene_painter.h"

namespace coutil {

namespace {

constexpr int kLetterPx = 11;
constexpr double kNameLeftPx = kSideRulerPx + 8;
// Below this scale a name would be as wide as the panels it stands between.
constexpr double kSmallestNamedPxPerMm = 0.35;

QFont letterFont(const QFont& font) {
    QFont small(font);
    small.setPixelSize(kLetterPx);
    return small;
}

struct NamedLevel {
    const SceneLevel* level = nullptr;
    double yPx = 0;
    double widthPx = 0;
    bool isNamed = false;
};

// The waist keeps its name first; others give way where two would touch.
std::vector<NamedLevel> namedLevels(const TableLook& look) {
    const QFontMetricsF metrics(letterFont(look.font));
    std::vector<NamedLevel> rows;
    for (const SceneLevel& level : look.scene.levels) {
        const double y = std::round(look.view.toPx(QPointF(0, level.yMm)).y()) + 0.5;
        rows.push_back({&level, y, metrics.horizontalAdvance(level.name), false});
    }
    std::vector<std::size_t> order(rows.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return std::abs(rows[a].level->yMm) < std::abs(rows[b].level->yMm);
    });
    for (const std::size_t i : order) {
        rows[i].isNamed = std::none_of(rows.begin(), rows.end(), [&](const NamedLevel& other) {
            return other.isNamed && std::abs(other.yPx - rows[i].yPx) < kLetterPx + 3;
        });
    }
    return rows;
}

QRectF levelNameBox(const NamedLevel& row) {
    return {kNameLeftPx - 3, row.yPx - kLetterPx / 2.0 - 2, row.widthPx + 6, kLetterPx + 4.0};
}

}  // namespace

double levelMarginPx(const TableScene& scene, const QFont& font) {
    const QFontMetricsF metrics(letterFont(font));
    double widest = 0;
    for (const SceneLevel& level : scene.levels) {
        widest = std::max(widest, metrics.horizontalAdvance(level.name));
    }
    return widest > 0 ? widest + 16 : 0;
}

void paintLevels(QPainter& painter, const TableLook& look) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (const NamedLevel& row : namedLevels(look)) {
        const bool isWaist = row.level->yMm == 0;
        painter.setPen(QPen(isWaist ? look.colours.waist : look.colours.level, 0));
        const double left =
            row.isNamed ? levelNameBox(row).right() + 2 : look.area.left() + kSideRulerPx;
        painter.drawLine(QPointF(left, row.yPx), QPointF(look.area.right(), row.yPx));
    }
    painter.restore();
}

void paintLevelNames(QPainter& painter, const TableLook& look) {
    painter.setFont(letterFont(look.font));
    for (const NamedLevel& row : namedLevels(look)) {
        if (!row.isNamed) continue;
        const QRectF box = levelNameBox(row);
        if (!box.intersects(look.area)) continue;
        painter.fillRect(box, look.colours.paper);
        painter.setPen(row.level->yMm == 0 ? look.colours.waist : look.colours.text);
        painter.drawText(box, Qt::AlignCenter, row.level->name);
    }
}

void paintLetterings(QPainter& painter, const TableLook& look) {
    if (look.view.pxPerMm() < kSmallestNamedPxPerMm) return;
    const QFont font = letterFont(look.font);
    const QFontMetricsF metrics(font);
    painter.setFont(font);
    painter.setPen(look.colours.text);
    std::vector<QRectF> taken;
    for (const SceneLettering& lettering : look.scene.letterings) {
        const QSizeF size(metrics.horizontalAdvance(lettering.text) + 4, kLetterPx + 2.0);
        for (const QPointF& place : lettering.places) {
            const QPointF middle = look.view.toPx(place);
            const QRectF box(middle.x() - size.width() / 2, middle.y() - size.height() / 2,
                             size.width(), size.height());
            if (!box.intersects(look.area) || isCrossed(look.scene, look.flat, look.view, box) ||
                std::any_of(taken.begin(), taken.end(),
                            [&](const QRectF& other) { return other.intersects(box); })) {
                continue;
            }
            painter.drawText(box, Qt::AlignCenter, lettering.text);
            taken.push_back(box);
            break;
        }
    }
}

}  // namespace coutil
