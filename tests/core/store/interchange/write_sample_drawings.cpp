// Writes the sample corsets as JSON, SVG and DXF into folders, for other programs to read back.
#include <filesystem>
#include <fstream>
#include <iostream>
#include <string>

#include "core/store/interchange.h"
#include "core/store/text_formats.h"
#include "tests/core/store/interchange/sample_pieces.h"

namespace {

void write(const std::filesystem::path& file, const std::string& text) {
    std::ofstream out(file, std::ios::binary);
    out << text;
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 2) {
        std::cerr << "one folder to write to, please\n";
        return 2;
    }
    using namespace coutil;
    const TracingTitle title = samples::title();
    for (const samples::Sample& sample : samples::all()) {
        const std::filesystem::path folder = std::filesystem::path(argv[1]) / sample.name;
        std::filesystem::create_directories(folder);
        write(folder / "pattern.json", writePatternJson(sample.pattern, {}, {}, {}));
        write(folder / "pattern.svg", writePatternSvg(sample.pattern, title));
        write(folder / "pattern.dxf", writePatternDxf(sample.pattern, title));
        write(folder / "tracings.json", writeTracingsJson(sample.tracings, title, {}, {}));
        write(folder / "tracings.svg", writeTracingsSvg(sample.tracings, title));
        write(folder / "tracings.dxf", writeTracingsDxf(sample.tracings, title));
        // The kerf that check_cutter.py expects.
        const CutterChoices choices{0.2, true};
        const auto svg = writeCutterSvg(sample.tracings, title, choices);
        const auto dxf = writeCutterDxf(sample.tracings, choices);
        if (!svg || !dxf) return 1;
        write(folder / "cutter.svg", *svg);
        write(folder / "cutter.dxf", *dxf);
    }
    return 0;
}
