#pragma once
// A cutting file as a library of others reads it: read_dxf.py beside this file, run as a process.
#include <string>
#include <vector>

namespace toehold::test {

struct ReadContour {
    std::string layer;
    std::string kind;               ///< CIRCLE, POLYGON (closed) or OPEN
    double area = 0.0;              ///< in the file's unit squared; positive counter-clockwise
    double x = 0.0, y = 0.0;        ///< center, or middle of the vertices
    double diameter_or_arcs = 0.0;  ///< of a circle its diameter, of a polygon how many arcs it has
};

struct ReadLayer {
    std::string name;
    int color = 0;
};

struct ReadText {
    std::string layer;
    double x = 0.0, y = 0.0;
    std::string words;
};

struct ReadDxf {
    std::string version;
    int errors = -1, fixes = -1;  ///< of the reader's audit
    double low_x = 0.0, low_y = 0.0, high_x = 0.0, high_y = 0.0;
    std::vector<ReadLayer> layers;
    std::vector<ReadContour> contours;
    std::vector<ReadText> texts;
    int lines = 0;    ///< on the layer MARK
    int unknown = 0;  ///< anything else
};

/// Throws std::runtime_error where the reader does not end well.
[[nodiscard]] ReadDxf read_dxf(const std::string& bytes);
/// The contours on one layer.
[[nodiscard]] std::vector<ReadContour> on_layer(const ReadDxf& file, const std::string& layer);

}  // namespace toehold::test
