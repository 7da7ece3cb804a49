#include "ui/papers/page_writer.h"

#include <QTransform>
#include <algorithm>
#include <utility>

#include "core/sheets/sheet_lettering.h"

namespace coutil {

namespace {

constexpr double kFooterMm = 6;
constexpr int kParts = 16;

double mm(long long um) { return static_cast<double>(um) / 1000; }

}  // namespace

PageWriter::PageWriter(const Paper& paper, double marginMm, QString footer)
    : widthMm_(mm(paper.widthUm)),
      heightMm_(mm(paper.heightUm)),
      marginMm_(marginMm),
      footer_(std::move(footer)) {
    newPage();
}

void PageWriter::newPage() {
    SheetDrawing page;
    page.name = std::to_string(pages_.size() + 1);
    page.widthMm = widthMm_;
    page.heightMm = heightMm_;
    page.marginMm = marginMm_ / 2;
    pages_.push_back(std::move(page));
}

double PageWriter::bottomMm() const { return heightMm_ - marginMm_ - kFooterMm; }

Point PageWriter::onPage(const QPointF& p) const { return {p.x(), heightMm_ - p.y()}; }

void PageWriter::line(const QPointF& from, const QPointF& to, double penMm, SheetInk ink,
                      SheetDash dash) {
    pages_.back().strokes.push_back({straightPath(onPage(from), onPage(to)), penMm, dash, ink});
}

void PageWriter::box(const QRectF& box, double penMm, SheetInk ink) {
    const Path path =
        polylinePath({onPage(box.topLeft()), onPage(box.topRight()), onPage(box.bottomRight()),
                      onPage(box.bottomLeft()), onPage(box.topLeft())});
    pages_.back().strokes.push_back({path, penMm, SheetDash::solid, ink});
}

void PageWriter::finishRun(Path& run, SheetStroke pen) {
    pen.path = std::exchange(run, {});
    if (!pen.path.isEmpty()) pages_.back().strokes.push_back(std::move(pen));
}

void PageWriter::addInside(const Cubic& piece, const Box& place, Path& run,
                           const SheetStroke& pen) {
    const auto isInside = [&](const Point& p) {
        return (p.array() >= place.lowest.array()).all() &&
               (p.array() <= place.highest.array()).all();
    };
    for (int i = 0; i < kParts; ++i) {
        const Cubic part = between(piece, i / double{kParts}, (i + 1) / double{kParts});
        if (isInside(part.p0) && isInside(part.p3)) {
            run.pieces.push_back(part);
        } else {
            finishRun(run, pen);
        }
    }
}

void PageWriter::drawing(const QPainterPath& path, const QTransform& toPage, const QRectF& place,
                         double penMm, SheetInk ink, SheetDash dash) {
    const SheetStroke pen{{}, penMm, dash, ink};
    const Box box{onPage(place.bottomLeft()), onPage(place.topRight())};
    Path run;
    Point at = Point::Zero();
    const auto pointOf = [&](int i) {
        const auto element = path.elementAt(i);
        return onPage(toPage.map(QPointF(element.x, element.y)));
    };
    for (int i = 0; i < path.elementCount(); ++i) {
        switch (path.elementAt(i).type) {
            case QPainterPath::MoveToElement:
                finishRun(run, pen);
                break;
            case QPainterPath::LineToElement:
                addInside(straightCubic(at, pointOf(i)), box, run, pen);
                break;
            case QPainterPath::CurveToElement:
                addInside({at, pointOf(i), pointOf(i + 1), pointOf(i + 2)}, box, run, pen);
                i += 2;
                break;
            case QPainterPath::CurveToDataElement:
                break;
        }
        at = pointOf(i);
    }
    finishRun(run, pen);
}

void PageWriter::drawing(const Path& path, const QTransform& toPage, double penMm, SheetInk ink,
                         SheetDash dash) {
    Path drawn;
    const auto place = [&](const Point& p) { return onPage(toPage.map(QPointF(p.x(), p.y()))); };
    for (const Cubic& c : path.pieces) {
        drawn.pieces.push_back({place(c.p0), place(c.p1), place(c.p2), place(c.p3)});
    }
    if (!drawn.isEmpty()) pages_.back().strokes.push_back({drawn, penMm, dash, ink});
}

void PageWriter::text(const QString& text, const QPointF& at, double heightMm, double roomMm,
                      TextAnchor anchor, SheetInk ink) {
    pages_.back().letterings.push_back(
        {text.toStdString(), onPage(at), heightMm, 0, anchor, ink, roomMm});
}

double PageWriter::paragraph(const QString& text, double leftMm, double topMm, double widthMm,
                             double heightMm) {
    double y = topMm;
    for (const auto& words : wrapped(text.toStdString(), widthMm, heightMm)) {
        y += heightMm;
        this->text(QString::fromStdString(words), {leftMm, y}, heightMm, widthMm);
        y += heightMm * (kLineSpacing - 1);
    }
    return y;
}

double PageWriter::heightOf(const QString& text, double widthMm, double heightMm) {
    return static_cast<double>(wrapped(text.toStdString(), widthMm, heightMm).size()) * heightMm *
           kLineSpacing;
}

void PageWriter::writeLine(const QString& name, const QPointF& at, double toMm, double heightMm) {
    text(name, at, heightMm, (toMm - at.x()) * 0.75);
    const double from =
        at.x() + std::min(aboutWidthMm(name.toStdString(), heightMm) + 2, (toMm - at.x()) * 0.8);
    line({from, at.y() + 0.6}, {toMm, at.y() + 0.6}, 0.15);
}

std::vector<SheetDrawing> PageWriter::finished() {
    const auto count = static_cast<int>(pages_.size());
    auto pages = std::exchange(pages_, {});
    for (int i = 0; i < count; ++i) {
        SheetDrawing& page = pages[static_cast<std::size_t>(i)];
        const QString words = footer_.arg(i + 1).arg(count);
        page.letterings.push_back({words.toStdString(), Point(marginMm_, marginMm_),
                                   letters::kSmall, 0, TextAnchor::left, SheetInk::mark, roomMm()});
    }
    return pages;
}

}  // namespace coutil
