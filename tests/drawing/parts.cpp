#include "drawing/parts.h"

#include "catalog/resolve.h"
#include "review/review.h"
#include "support/compare.h"
#include "support/example.h"
#include "xml/catalog/catalog_file.h"
#include "xml/detail/detail_file.h"
#include "xml/document/file.h"

#include <algorithm>
#include <filesystem>
#include <set>

using namespace toehold;
using namespace toehold::drawing;
using Parts = std::vector<std::string>;

namespace {

const catalog::Catalog& catalogs() {
    static const catalog::Catalog catalog = xml::read_catalog(TOEHOLD_DATA_FOLDER).catalog;
    return catalog;
}

/// Two of each kind of member, a ledger and a beam, one shim.
model::BaseDetail framed() {
    model::BaseDetail detail = test::example_resolved().detail;
    on_deck(detail).layers.shims.push_back({});
    detail.framing.joists = model::Joists{};
    detail.framing.joists->members = {{"J1", 0.0, 1}, {"J2", 16.0, 1}};
    model::Rim rim;
    rim.id = "R1";
    detail.framing.rims = {rim};
    model::JoistSupport ledger, beam;
    ledger.id = "S1";
    beam.id = "S2";
    detail.framing.supports = {ledger, beam};
    return detail;
}

std::vector<std::filesystem::path> demo_details() {
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(std::string(TOEHOLD_DATA_FOLDER) + "/demo")) {
        if (xml::document_kind(entry.path()) == xml::DocumentKind::detail) files.push_back(entry.path());
    }
    std::sort(files.begin(), files.end());
    return files;
}

std::set<std::string> subjects(const review::Review& review) {
    std::set<std::string> all;
    for (const checks::CheckResult& check : review.checks) all.insert(check.subject);
    for (const checks::Finding& finding : review.findings) all.insert(finding.subject);
    return all;
}

}  // namespace

TEST_CASE("A part's name is its kind and its id") {
    CHECK(anchor_part("A") == "anchor A");
    CHECK(id_of("anchor A", "anchor") == "A");
    CHECK(id_of("block B 1", "block") == "B 1");
    CHECK(id_of("anchor A", "block").empty());
    CHECK(id_of("anchor", "anchor").empty());
    CHECK(id_of("anchor ", "anchor").empty());
    CHECK(id_of("anchors A", "anchor").empty());
}

TEST_CASE("The parts of a detail come in the order of the load path") {
    CHECK(parts(framed()) == Parts{"push", "guard", "post", "weld", "plate", "anchor A", "anchor B", "anchor C",
                                   "anchor D", "decking", "shim 1", "block B1", "block B2", "joist J1", "joist J2",
                                   "rim R1", "support S1", "support S2"});
}

TEST_CASE("What is not there is no part") {
    model::BaseDetail detail = framed();
    on_deck(detail).weld.reset();
    on_deck(detail).layers = {};
    detail.framing = {};
    CHECK(parts(detail) == Parts{"push", "guard", "post", "plate", "anchor A", "anchor B", "anchor C", "anchor D"});
}

TEST_CASE("A subject names its parts, the one it begins with first") {
    const model::BaseDetail detail = framed();
    const Parts anchors = {"anchor A", "anchor B", "anchor C", "anchor D"};
    const auto of = [&detail](const char* subject) { return parts_of_subject(subject, detail); };
    CHECK(of("anchor A") == Parts{"anchor A"});
    CHECK(of("hole B") == Parts{"anchor B"});
    CHECK(of("block B1") == Parts{"block B1"});
    CHECK(of("block B1 at joist J2") == Parts{"block B1", "joist J2"});
    CHECK(of("block B2, upper end") == Parts{"block B2"});
    CHECK(of("upper end of block B1") == Parts{"block B1"});
    CHECK(of("joist J1 at beam S2") == Parts{"joist J1", "support S2"});
    CHECK(of("joist J2 at ledger S1") == Parts{"joist J2", "support S1"});
    CHECK(of("joists at rim R1") == Parts{"joist J1", "joist J2", "rim R1"});
    CHECK(of("rim R1 at joist J2") == Parts{"rim R1", "joist J2"});
    CHECK(of("boards") == Parts{"decking"});
    CHECK(of("decking") == Parts{"decking"});
    CHECK(of("shim 1") == Parts{"shim 1"});
    CHECK(of("guard") == Parts{"guard"});
    CHECK(of("post") == Parts{"post"});
    CHECK(of("shoe") == Parts{"post"});
    CHECK(of("weld of the post") == Parts{"weld"});
    CHECK(of("weld of the shoe") == Parts{"weld"});
    CHECK(of("base") == Parts{"plate"});
    CHECK(of("anchors") == anchors);
    CHECK(of("plate at its toe") == Parts{"plate"});
    CHECK(of("plate at its anchors") == Parts{"plate", "anchor A", "anchor B", "anchor C", "anchor D"});
    CHECK(of("framing") == Parts{"block B1", "block B2", "joist J1", "joist J2", "rim R1"});
    CHECK(of("blocks along the rail") == Parts{"block B1", "block B2"});
}

TEST_CASE("A subject about nothing of this detail means nothing") {
    const model::BaseDetail detail = framed();
    for (const char* subject : {"", "anchor Z", "block B12", "joist J", "anchorA", "weather", "basis"})
        CHECK(parts_of_subject(subject, detail).empty());
}

TEST_CASE("A fastener's own name is not read for parts") {
    model::BaseDetail detail = framed();
    model::ReportedFastener reported;
    reported.name = "post and plate screw";
    on_deck(detail).anchors = {{{"B", "C"}, reported, std::nullopt, ""}};
    CHECK(parts_of_subject("fastener post and plate screw", detail) == Parts{"anchor B", "anchor C"});
    CHECK(parts_of_subject("fastener plate", detail).empty());
}

TEST_CASE("Every subject of the shipped details' reviews points at parts that are there") {
    REQUIRE(demo_details().size() > 10);
    for (const std::filesystem::path& file : demo_details()) {
        const xml::DetailRead read = xml::read_detail(file);
        REQUIRE(read.detail);
        const catalog::Resolution resolution = catalog::resolve(*read.detail, catalogs());
        REQUIRE(resolution.resolved);
        const Parts all = parts(*read.detail);
        for (const std::string& subject : subjects(review::evaluate(*resolution.resolved, ""))) {
            INFO(file.filename().string() << ": " << subject);
            const Parts meant = parts_of_subject(subject, *read.detail);
            CHECK_FALSE(meant.empty());
            for (const std::string& part : meant) CHECK(std::find(all.begin(), all.end(), part) != all.end());
        }
    }
}
