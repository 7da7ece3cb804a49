// Writes the sample corset as JSON, SVG and DXF into a folder, for other programs to read back.
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
    const std::filesystem::path folder = argv[1];
    std::filesystem::create_directories(folder);
    const Pattern pattern = samples::corset();
    const auto tracings = samples::tracings();
    const TracingTitle title = samples::title();
    write(folder / "pattern.json", writePatternJson(pattern, {}, {}, {}));
    write(folder / "pattern.svg", writePatternSvg(pattern, title));
    write(folder / "pattern.dxf", writePatternDxf(pattern, title));
    write(folder / "tracings.json", writeTracingsJson(tracings, title, {}, {}));
    write(folder / "tracings.svg", writeTracingsSvg(tracings, title));
    write(folder / "tracings.dxf", writeTracingsDxf(tracings, title));
    return 0;
}
