#include "ui/printing/pdf_parts.h"

#include <algorithm>

namespace coutil {
namespace {

using Kind = std::optional<LineKind>;

bool isLayered(const SheetDrawing& drawing) {
    const auto hasKind = [](const auto& item) { return item.kind.has_value(); };
    return std::ranges::any_of(drawing.strokes, hasKind) ||
           std::ranges::any_of(drawing.letterings, hasKind);
}

SheetDrawing partOf(const SheetDrawing& drawing, const Kind& kind, bool isPale) {
    SheetDrawing part;
    part.name = drawing.name;
    part.widthMm = drawing.widthMm;
    part.heightMm = drawing.heightMm;
    part.marginMm = drawing.marginMm;
    for (const SheetLettering& lettering : drawing.letterings) {
        if (lettering.kind == kind && (lettering.ink == SheetInk::pale) == isPale) {
            part.letterings.push_back(lettering);
        }
    }
    if (isPale) return part;
    for (const SheetStroke& stroke : drawing.strokes) {
        if (stroke.kind == kind) part.strokes.push_back(stroke);
    }
    return part;
}

}  // namespace

std::vector<PdfPart> partsOf(const SheetDrawing& drawing) {
    std::vector<PdfPart> parts;
    if (!isLayered(drawing)) {
        parts.push_back({std::nullopt, drawing});
        return parts;
    }
    std::vector<Kind> kinds{std::nullopt};
    kinds.insert(kinds.end(), allLineKinds().begin(), allLineKinds().end());
    for (const bool isPale : {true, false}) {
        for (const Kind& kind : kinds) {
            SheetDrawing part = partOf(drawing, kind, isPale);
            if (part.strokes.empty() && part.letterings.empty()) continue;
            parts.push_back({kind, std::move(part)});
        }
    }
    return parts;
}

}  // namespace coutil
