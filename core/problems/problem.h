#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/geometry/point.h"
#include "core/problems/problem_code.h"

namespace coutil {

enum class Severity { note, warning, error };

enum class FigureUnit { millimetre, percent, degree, count };

// One number of a problem. The name is a key ("value", "limit", "other", "lowest", "highest", ...)
// that the sentence of the code refers to; lengths are millimetres and shown in the maker's unit.
struct Figure {
    std::string name;
    double value = 0;
    FigureUnit unit = FigureUnit::millimetre;

    bool operator==(const Figure&) const = default;
};

// What is wrong, where, and by how much. Words are made in ui.
struct Problem {
    ProblemCode code{};
    Severity severity = Severity::error;
    std::string
        subject{};  // what it is about: a measurement or style key, seam, level, file path, option
    std::string detail{};  // the text as it was typed or read, or a second subject; may be empty
    std::string panel{};   // panel name if it has a place on the pattern
    std::optional<Point> at{};  // in that panel's frame, mm
    std::vector<Figure> figures{};

    bool operator==(const Problem&) const = default;
};

[[nodiscard]] inline bool isError(const Problem& problem) {
    return problem.severity == Severity::error;
}

// A value, or the problems that prevent it; or a value with problems worth knowing.
// No value means at least one problem of severity error.
template <class T>
struct Outcome {
    std::optional<T> value;
    std::vector<Problem> problems;

    Outcome() = default;
    Outcome(T v) : value(std::move(v)) {}                     // NOLINT: reads as the value
    Outcome(Problem p) { problems.push_back(std::move(p)); }  // NOLINT: reads as the problem
    Outcome(T v, std::vector<Problem> p) : value(std::move(v)), problems(std::move(p)) {}
    [[nodiscard]] static Outcome failed(std::vector<Problem> p) {
        Outcome o;
        o.problems.swap(p);
        return o;
    }
    [[nodiscard]] bool hasValue() const { return value.has_value(); }
    explicit operator bool() const { return value.has_value(); }
    T& operator*() { return *value; }
    const T& operator*() const { return *value; }
    T* operator->() { return &*value; }
    const T* operator->() const { return &*value; }
};

}  // namespace coutil
