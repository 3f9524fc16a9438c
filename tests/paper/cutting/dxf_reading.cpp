#include "dxf_reading.h"

#include "support/compare.h"
#include "support/temporary_folder.h"

#include <array>
#include <cstdio>
#include <fstream>
#include <sstream>

namespace toehold::test {
namespace {

std::string output_of(const std::string& command, int& status) {
    std::FILE* const pipe = ::popen((command + " 2>&1").c_str(), "r");
    REQUIRE(pipe != nullptr);
    std::array<char, 4096> buffer{};
    std::string text;
    for (std::size_t count = 1; count > 0;) {
        count = std::fread(buffer.data(), 1, buffer.size(), pipe);
        text.append(buffer.data(), count);
    }
    status = ::pclose(pipe);
    return text;
}

std::string rest_of(std::istringstream& words) {
    std::string rest;
    std::getline(words >> std::ws, rest);
    return rest;
}

void read_line(ReadDxf& file, const std::string& line) {
    std::istringstream words(line);
    std::string what, skipped;
    words >> what;
    if (what == "version") {
        words >> file.version;
    } else if (what == "errors") {
        words >> file.errors >> skipped >> file.fixes;
    } else if (what == "$EXTMIN") {
        words >> file.low_x >> file.low_y;
    } else if (what == "$EXTMAX") {
        words >> file.high_x >> file.high_y;
    } else if (what == "layer") {
        ReadLayer layer;
        words >> layer.name >> layer.color;
        file.layers.push_back(layer);
    } else if (what == "contour") {
        ReadContour contour;
        words >> contour.layer >> contour.kind >> contour.area >> contour.x >> contour.y >> contour.diameter_or_arcs;
        file.contours.push_back(contour);
    } else if (what == "line") {
        words >> skipped;
        skipped == "MARK" ? ++file.lines : ++file.unknown;
    } else if (what == "text") {
        ReadText text;
        words >> text.layer >> text.x >> text.y;
        text.words = rest_of(words);
        file.texts.push_back(text);
    } else {
        ++file.unknown;
    }
}

}  // namespace

ReadDxf read_dxf(const std::string& bytes) {
    const TemporaryFolder folder;
    const std::filesystem::path path = folder.path() / "plate.dxf";
    std::ofstream(path, std::ios::binary) << bytes;
    int status = -1;
    const std::string said = output_of(
        "/usr/bin/python3 '" TOEHOLD_TEST_FOLDER "/paper/cutting/read_dxf.py' '" + path.string() + "'", status);
    INFO(said);
    REQUIRE(status == 0);
    ReadDxf file;
    std::istringstream lines(said);
    for (std::string line; std::getline(lines, line);) read_line(file, line);
    return file;
}

std::vector<ReadContour> on_layer(const ReadDxf& file, const std::string& layer) {
    std::vector<ReadContour> found;
    for (const ReadContour& contour : file.contours) {
        if (contour.layer == layer) found.push_back(contour);
    }
    return found;
}

}  // namespace toehold::test
