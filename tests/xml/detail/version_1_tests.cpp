// Files of version 1 are read for ever. What version 0.5.0 wrote of each stands in `written`: another text there would
// mean that a file says something else than it did.
#include "xml/samples.h"

#include <catch2/catch.hpp>
#include <set>

using namespace toehold;

namespace {

std::vector<std::filesystem::path> files() {
    std::vector<std::filesystem::path> result;
    for (const auto& entry : std::filesystem::directory_iterator(test::good_file(""))) {
        if (entry.is_regular_file()) result.push_back(entry.path());
    }
    REQUIRE(result.size() >= 9);
    return result;
}

/// What is written of the document in this file.
std::string rewritten(const std::filesystem::path& file) {
    INFO(file);
    if (xml::document_kind(file) == xml::DocumentKind::plates) {
        const xml::PlatesRead read = xml::read_plates(file);
        CHECK(test::sentences(read.problems) == "");
        return xml::write_plates(read.plates);
    }
    const xml::DetailRead read = xml::read_detail(file);
    CHECK(test::sentences(read.problems) == "");
    REQUIRE(read.detail);
    return xml::write_detail(*read.detail);
}

/// The values of `attribute` in every `<xs:TAG ...>` of a schema.
std::set<std::string> declared(const std::string& schema, const std::string& tag, const std::string& attribute) {
    std::set<std::string> values;
    const std::string start = "<xs:" + tag + " ";
    for (std::size_t at = schema.find(start); at != std::string::npos; at = schema.find(start, at + 1)) {
        const std::string element = schema.substr(at, schema.find('>', at) - at);
        const std::size_t value = element.find(" " + attribute + "=\"");
        if (value == std::string::npos) continue;
        const std::size_t from = element.find('"', value) + 1;
        values.insert(element.substr(from, element.find('"', from) - from));
    }
    return values;
}

}  // namespace

TEST_CASE("every file of version 1 is read, and says what it said when it was made", "[unit]") {
    for (const std::filesystem::path& file : files()) {
        INFO(file);
        const std::filesystem::path written = file.parent_path() / "written" / file.filename();
        CHECK(rewritten(file) == test::bytes_of(written));
        CHECK(rewritten(written) == test::bytes_of(written));
    }
}

TEST_CASE("the files of version 1 hold every element, every attribute and every word of its schemas", "[unit]") {
    std::string all;
    for (const std::filesystem::path& file : files()) all += test::bytes_of(file);
    std::size_t count = 0;
    for (const char* name : {"base-detail.xsd", "base.xsd", "plate.xsd", "plates.xsd"}) {
        const std::string schema = test::bytes_of(std::filesystem::path(TOEHOLD_DATA_FOLDER) / "schema" / name);
        const auto check = [&](const std::set<std::string>& words, const std::string& before,
                               const std::string& after) {
            for (const std::string& word : words) {
                INFO(before << word << after << " of " << name);
                CHECK(all.find(before + word + after) != std::string::npos);
                ++count;
            }
        };
        check(declared(schema, "element", "name"), "<", "");
        check(declared(schema, "attribute", "name"), " ", "=\"");
        check(declared(schema, "enumeration", "value"), "=\"", "\"");
    }
    CHECK(count > 120);
}
