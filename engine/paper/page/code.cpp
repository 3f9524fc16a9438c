#include "paper/page/code.h"

#include "paper/page/html.h"

#include <fmt/format.h>
#include <qrencode.h>

#include <memory>
#include <stdexcept>

namespace toehold::paper::page {
namespace {

struct Release {
    void operator()(QRcode* code) const { QRcode_free(code); }
};

bool dark(const QRcode& code, int column, int row) {
    return (code.data[row * code.width + column] & 1U) != 0;  // NOLINT: the library's array
}

}  // namespace

std::string qr_code(const std::string& words, const std::string& label) {
    constexpr int any_version = 0, quiet = 4;
    const bool whole = !words.empty() && words.find('\0') == std::string::npos;
    const std::unique_ptr<QRcode, Release> code(
        whole ? QRcode_encodeString8bit(words.c_str(), any_version, QR_ECLEVEL_M) : nullptr);
    if (code == nullptr) throw std::invalid_argument("no QR code holds these words");
    std::string path;
    for (int row = 0; row < code->width; ++row) {
        for (int column = 0; column < code->width; ++column) {
            int end = column;
            while (end < code->width && dark(*code, end, row)) ++end;
            if (end > column)
                path += fmt::format("M{} {}h{}v1h-{}z", column + quiet, row + quiet, end - column, end - column);
            if (end > column) column = end;
        }
    }
    const int across = code->width + 2 * quiet;
    return fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {0} {0}\" role=\"img\" aria-label=\"{1}\" "
        "shape-rendering=\"crispEdges\"><path fill=\"#fff\" d=\"M0 0h{0}v{0}h-{0}z\"/><path fill=\"#000\" "
        "d=\"{2}\"/></svg>",
        across, escaped(label), path);
}

}  // namespace toehold::paper::page
