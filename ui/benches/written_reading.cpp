#include "ui/benches/written_reading.h"

#include <cmath>

namespace coutil {

namespace {

constexpr double kSameLengthMm = 1e-6;

bool means(const std::string& text, double mm, LengthUnit unit) {
    const auto read = readLengthMm(text, unit);
    return read && std::abs(*read - mm) < kSameLengthMm;
}

}  // namespace

std::string writtenReading(const QString& text, double mm, LengthUnit fieldUnit,
                           LengthUnit setUnit) {
    std::string plain = text.trimmed().toStdString();
    if (means(plain, mm, setUnit)) return plain;
    std::string named = plain + ' ' + std::string(keyOf(fieldUnit));
    if (means(named, mm, setUnit)) return named;
    return writtenLengthWithUnit(mm, setUnit);
}

}  // namespace coutil
