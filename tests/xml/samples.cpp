#include "xml/samples.h"

#include <algorithm>
#include <catch2/catch.hpp>

namespace toehold::test {

std::filesystem::path good_file(const std::string& name) {
    return std::filesystem::path(TOEHOLD_TEST_FOLDER) / "files" / "version_1" / name;
}

std::filesystem::path bad_file(const std::string& name) {
    return std::filesystem::path(TOEHOLD_TEST_FOLDER) / "files" / "bad" / name;
}

std::vector<std::filesystem::path> good_details() {
    std::vector<std::filesystem::path> result;
    for (const auto& entry : std::filesystem::directory_iterator(good_file(""))) {
        if (xml::document_kind(entry.path()) == xml::DocumentKind::detail) result.push_back(entry.path());
    }
    std::sort(result.begin(), result.end());
    REQUIRE(result.size() >= 5);
    return result;
}

std::string plain_detail() { return bytes_of(good_file("square-tube-lag-screws.xml")); }

std::string changed(const std::string& text, const std::string& from, const std::string& to) {
    const std::size_t at = text.find(from);
    INFO("looking for " << from);
    REQUIRE(at != std::string::npos);
    REQUIRE(text.find(from, at + 1) == std::string::npos);
    return text.substr(0, at) + to + text.substr(at + from.size());
}

}  // namespace toehold::test
