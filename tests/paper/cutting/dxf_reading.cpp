#include "dxf_reading.h"

#include "paper/read_back.h"

#include <sstream>

namespace toehold::test {
namespace {

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
    const std::string said =
        read_by("/usr/bin/python3 '" TOEHOLD_TEST_FOLDER "/paper/cutting/read_dxf.py'", bytes, "dxf");
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
