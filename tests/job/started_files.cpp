// Every job gives a whole file: it reads back as the detail it was made of, says nothing that cannot be built or looked
// up, fits the schema, and marks each assumed value once.
#include "catalog/resolve.h"
#include "job/file.h"
#include "job/paths.h"
#include "jobs.h"
#include "support/file_bytes.h"
#include "support/problems.h"
#include "support/program.h"
#include "support/shipped.h"
#include "support/temporary_folder.h"
#include "xml/detail/detail_file.h"
#include "xml/detail/parts.h"

#include <fmt/format.h>
#include <catch2/catch.hpp>

#include <algorithm>
#include <fstream>
#include <set>

using namespace toehold;
using test::all_jobs;
using test::sentences;
using test::shipped_catalog;

namespace {

std::size_t count_of(const std::string& text, const std::string& part) {
    std::size_t count = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + part.size())) ++count;
    return count;
}

/// The one number by which the hands that draw a detail could be wrong about where it is built.
bool in_order(const job::Started& started) {
    const xml::Element root = xml::detail_element(started.detail);
    std::vector<std::vector<std::size_t>> places;
    for (const job::Assumed& assumed : started.assumed) places.push_back(job::steps_to(root, assumed.element));
    return std::is_sorted(places.begin(), places.end());
}

}  // namespace

TEST_CASE("every job starts a detail that reads back, validates and resolves", "[property]") {
    for (const job::Job& one : all_jobs()) {
        INFO(test::words(one));
        const model::Problems wrong = job::problems(one, shipped_catalog());
        INFO(sentences(wrong));
        REQUIRE(wrong.empty());
        const job::Started started = job::start(one, shipped_catalog());
        const std::string text = job::as_file(started);
        const xml::DetailRead read = xml::read_detail_text(text, "started.xml");
        INFO(sentences(read.problems));
        REQUIRE(read.detail);
        CHECK(*read.detail == started.detail);
        CHECK(read.problems.empty());
        const catalog::Resolution resolution = catalog::resolve(*read.detail, shipped_catalog());
        INFO(sentences(resolution.problems));
        REQUIRE(resolution.resolved);
        for (const catalog::Anchor& anchor : resolution.resolved->anchors) CHECK(anchor.seat.has_value());
    }
}

TEST_CASE("a comment marks each assumed value, and nothing else", "[property]") {
    for (const job::Job& one : all_jobs()) {
        INFO(test::words(one));
        const job::Started started = job::start(one, shipped_catalog());
        const std::string text = job::as_file(started);
        CHECK(count_of(text, "<!--") == started.assumed.size());
        CHECK(count_of(text, "<!-- assumed: ") == started.assumed.size());
        CHECK(in_order(started));
        std::set<std::pair<std::string, std::string>> marked;
        for (const job::Assumed& assumed : started.assumed) {
            CHECK(marked.emplace(assumed.element, assumed.attribute).second);
            CHECK_FALSE(format::text(assumed.value, {}).empty());
            CHECK_FALSE(assumed.why.empty());
        }
    }
}

TEST_CASE("every started file fits the schema", "[property]") {
    const test::TemporaryFolder folder;
    std::string files;
    for (const job::Job& one : all_jobs()) {
        const std::string file = (folder.path() / fmt::format("{}.xml", files.size())).string();
        std::ofstream(file) << job::as_file(job::start(one, shipped_catalog()));
        files += " " + file;
    }
    std::string said;
    const std::string schema = TOEHOLD_DATA_FOLDER "/schema/base-detail.xsd";
    const int status = test::run("xmllint --noout --schema " + schema + files, &said);
    INFO(said.substr(0, 2000));
    CHECK(status == 0);
}

TEST_CASE("what the job tells is in the detail and not among the assumed values", "[unit]") {
    job::Job told;
    told.species = "hem-fir";
    told.grade = "no-1";
    told.treated = true;
    told.code = model::BuildingCode::ibc_2024;
    told.decking_thickness = "2x6";
    told.joist_span_in = 90.0;
    told.post = {"2x2x1/4", "steel-a500-c"};
    const job::Started started = job::start(told, shipped_catalog());
    CHECK(started.detail.framing.joists->species == "hem-fir");
    CHECK(started.detail.framing.blocks.front().grade == "no-1");
    CHECK(started.detail.basis.code == model::BuildingCode::ibc_2024);
    CHECK(model::on_deck(started.detail).layers.decking->thickness_in == 1.5);
    CHECK(started.detail.framing.supports[1].at_in - started.detail.framing.supports[0].at_in == Approx(90.0));
    CHECK(std::get<model::RectangularTube>(started.detail.post).metal == "steel-a500-c");
    for (const job::Assumed& assumed : started.assumed) {
        INFO(assumed.element << " " << assumed.attribute);
        for (const char* attribute : {"species", "grade", "treated", "code", "size", "metal"})
            CHECK(assumed.attribute != attribute);
    }
}

TEST_CASE("comments are in the reader's file as words, whatever they hold", "[unit]") {
    xml::Element element("plate");
    element.comment("one -- two --- three -");
    element.comment(std::string(300, 'w') + " and more words than one line of a file takes, so that they are wrapped");
    const std::string text = xml::document_text(xml::Element("root").child(element));
    const test::TemporaryFile file("comments.xml", text);
    CHECK(test::run("xmllint --noout " + file.path()) == 0);
    CHECK(text.find("one - - two - - - three - -->") != std::string::npos);
}
