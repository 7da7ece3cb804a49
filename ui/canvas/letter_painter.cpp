#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <vector>

#include "ui/canvas/ruler.h"
#include "ui/canvas/scene_painter.h"
#include "ui/canvas/sign_places.h"

namespace coutil {

namespace {

constexpr int kLetterPx = 11;
constexpr double kNameLeftPx = kSideRulerPx + 8;
constexpr double kBetweenColumnsPx = 10;
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
    double leftPx = 0;
    double widthPx = 0;
    bool isNamed = false;
};

// Widths of the columns of level names.
std::vector<double> columnWidthsPx(const TableScene& scene, const QFontMetricsF& metrics) {
    std::vector<double> widths;
    for (const SceneLevel& level : scene.levels) {
        const auto column = static_cast<std::size_t>(level.nameColumn);
        if (widths.size() <= column) widths.resize(column + 1, 0.0);
        widths[column] = std::max(widths[column], metrics.horizontalAdvance(level.name));
    }
    return widths;
}

// The waist keeps its name first; others give way where two would touch.
std::vector<NamedLevel> namedLevels(const TableLook& look) {
    const QFontMetricsF metrics(letterFont(look.font));
    const std::vector<double> widths = columnWidthsPx(look.scene, metrics);
    std::vector<NamedLevel> rows;
    for (const SceneLevel& level : look.scene.levels) {
        const double y = std::round(look.view.toPx(QPointF(0, level.yMm)).y()) + 0.5;
        double left = kNameLeftPx;
        for (int i = 0; i < level.nameColumn; ++i) {
            left += widths[static_cast<std::size_t>(i)] + kBetweenColumnsPx;
        }
        rows.push_back({&level, y, left, metrics.horizontalAdvance(level.name), false});
    }
    std::vector<std::size_t> order(rows.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return std::abs(rows[a].level->yMm) < std::abs(rows[b].level->yMm);
    });
    for (const std::size_t i : order) {
        rows[i].isNamed = std::none_of(rows.begin(), rows.end(), [&](const NamedLevel& other) {
            return other.isNamed && other.level->nameColumn == rows[i].level->nameColumn &&
                   std::abs(other.yPx - rows[i].yPx) < kLetterPx + 3;
        });
    }
    return rows;
}

QRectF levelNameBox(const NamedLevel& row) {
    return {row.leftPx - 3, row.yPx - kLetterPx / 2.0 - 2, row.widthPx + 6, kLetterPx + 4.0};
}

}  // namespace

double levelMarginPx(const TableScene& scene, const QFont& font) {
    const QFontMetricsF metrics(letterFont(font));
    double all = 0;
    for (const double width : columnWidthsPx(scene, metrics)) {
        all += width + (all > 0 ? kBetweenColumnsPx : 0);
    }
    return all > 0 ? all + 16 : 0;
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
    std::vector<QRectF> taken;  // readings first: a name has other places to stand
    for (const SignPlace& sign : signPlaces(look)) {
        taken.push_back(sign.shape);
        if (!sign.words.isNull()) taken.push_back(sign.words);
    }
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
