#include "core/store/interchange/svg_path_data.h"

#include "core/geometry/tolerances.h"
#include "core/store/interchange/svg_numbers.h"

namespace coutil::interchange {

namespace {

class PathReader {
  public:
    explicit PathReader(std::string_view data) : numbers_(data) {}

    std::optional<std::vector<SvgStretch>> all() {
        while (!numbers_.isAtEnd()) {
            const auto sign = numbers_.nextSign();
            if (!sign || !step(*sign)) return std::nullopt;
        }
        return std::move(stretches_);
    }

  private:
    // A command with as many sets of numbers as follow it.
    bool step(char sign) {
        isRelative_ = sign >= 'a' && sign <= 'z';
        const char command = isRelative_ ? static_cast<char>(sign - 'a' + 'A') : sign;
        if (command == 'Z') return close();
        if (command == 'M') return moveAndLines();
        if (stretches_.empty()) return false;
        bool isFirst = true;
        for (;;) {
            const auto first = numbers_.next();
            if (!first) return !isFirst;
            if (!draw(command, *first)) return false;
            isFirst = false;
        }
    }

    bool draw(char command, double first) {
        switch (command) {
            case 'L':
                return lineFrom(first);
            case 'H':
                return line({first + (isRelative_ ? at_.x() : 0), at_.y()});
            case 'V':
                return line({at_.x(), first + (isRelative_ ? at_.y() : 0)});
            case 'C':
            case 'S':
                return cubic(command == 'S', first);
            case 'Q':
            case 'T':
                return quadratic(command == 'T', first);
            default:
                return false;
        }
    }

    bool moveAndLines() {
        auto x = numbers_.next();
        if (!x) return false;
        const auto to = pointFrom(*x);
        if (!to) return false;
        begin(*to);
        while ((x = numbers_.next())) {
            if (!lineFrom(*x)) return false;
        }
        return true;
    }

    void begin(const Point& at) {
        stretches_.emplace_back();
        start_ = at;
        at_ = at;
        forget();
    }

    bool close() {
        if (stretches_.empty()) return false;
        Path& path = stretches_.back().path;
        const bool meets = (at_ - start_).norm() < tolerance::kInkGridMm;
        if (meets && !path.isEmpty()) path.pieces.back().p3 = start_;
        if (!meets) line(start_);
        stretches_.back().isClosed = true;
        at_ = start_;
        forget();
        isEnded_ = true;
        return true;
    }

    [[nodiscard]] std::optional<Point> pointFrom(double x) {
        const auto y = numbers_.next();
        if (!y) return std::nullopt;
        return Point(isRelative_ ? at_ + Vector(x, *y) : Point(x, *y));
    }
    [[nodiscard]] std::optional<Point> point() {
        const auto x = numbers_.next();
        return x ? pointFrom(*x) : std::nullopt;
    }

    bool lineFrom(double x) {
        const auto to = pointFrom(x);
        return to && line(*to);
    }
    bool line(const Point& to) {
        add(straightCubic(at_, to));
        forget();
        return true;
    }

    bool cubic(bool isSmooth, double first) {
        const auto given = pointFrom(first);
        const auto second = isSmooth ? given : point();
        const auto to = point();
        if (!given || !second || !to) return false;
        const Point out = isSmooth ? mirrored(lastCubic_) : *given;
        add({at_, out, *second, *to});
        forget();
        lastCubic_ = *second;
        return true;
    }

    bool quadratic(bool isSmooth, double first) {
        const auto given = pointFrom(first);
        const auto to = isSmooth ? given : point();
        if (!given || !to) return false;
        const Point middle = isSmooth ? mirrored(lastQuadratic_) : *given;
        // The same curve one degree higher.
        add({at_, at_ + (middle - at_) * 2 / 3, *to + (middle - *to) * 2 / 3, *to});
        forget();
        lastQuadratic_ = middle;
        return true;
    }

    [[nodiscard]] Point mirrored(const std::optional<Point>& control) const {
        return control ? Point(2 * at_ - *control) : at_;
    }

    // After a close without a move the next command begins a stretch of its own.
    void add(const Cubic& piece) {
        if (isEnded_) stretches_.emplace_back();
        isEnded_ = false;
        stretches_.back().path.pieces.push_back(piece);
        at_ = piece.p3;
    }
    void forget() {
        lastCubic_.reset();
        lastQuadratic_.reset();
        isEnded_ = false;
    }

    SvgNumbers numbers_;
    bool isRelative_ = false;
    bool isEnded_ = false;
    Point at_ = Point::Zero();
    Point start_ = Point::Zero();
    std::optional<Point> lastCubic_;
    std::optional<Point> lastQuadratic_;
    std::vector<SvgStretch> stretches_;
};

}  // namespace

std::optional<std::vector<SvgStretch>> readPathData(std::string_view data) {
    return PathReader(data).all();
}

}  // namespace coutil::interchange
