#include "porch.h"

#include <fstream>

namespace toehold::test {

namespace fs = std::filesystem;

Porch::Porch() {
    const fs::path demo = fs::path(TOEHOLD_DATA_FOLDER) / "demo";
    fs::copy_file(demo / "heron-landing-plates.xml", folder_.path() / "heron-landing-plates.xml");
    std::string text = bytes_of(demo / "heron-landing-lags-in-deep-blocks.xml");
    text.replace(text.find("<basis "), 7, "<basis plate=\"rigid\" ");
    std::ofstream(file()) << text;
}

Ran Porch::size(const std::vector<std::string>& more, const std::string& input) const {
    std::vector<std::string> arguments{"size", file(), "--vary", "thickness=3/8,1/2", "--vary", "length=4,6,8,9"};
    arguments.insert(arguments.end(), more.begin(), more.end());
    Surroundings surroundings;
    surroundings.input = input;
    return run_toehold(arguments, surroundings);
}

}  // namespace toehold::test
