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
    CHECK(drawing::parts(framed()) == Parts{"push", "guard", "post", "weld", "plate", "anchor A", "anchor B",
                                            "anchor C", "anchor D", "decking", "shim 1", "block B1", "block B2",
                                            "joist J1", "joist J2", "rim R1", "support S1", "support S2"});
}

TEST_CASE("What is not there is no part") {
    model::BaseDetail detail = framed();
    on_deck(detail).weld.reset();
    on_deck(detail).layers = {};
    detail.framing = {};
    CHECK(drawing::parts(detail) ==
          Parts{"push", "guard", "post", "plate", "anchor A", "anchor B", "anchor C", "anchor D"});
}

TEST_CASE("Every result and finding of the shipped details' reviews points at parts that are there") {
    REQUIRE(demo_details().size() > 10);
    for (const std::filesystem::path& file : demo_details()) {
        const xml::DetailRead read = xml::read_detail(file);
        REQUIRE(read.detail);
        const catalog::Resolution resolution = catalog::resolve(*read.detail, catalogs());
        REQUIRE(resolution.resolved);
        const Parts all = drawing::parts(*read.detail);
        const auto points_at_parts = [&](const auto& one) {
            INFO(file.filename().string() << ": " << one.id << ", " << model::key(one.part));
            const Parts meant = parts_of(one, *read.detail);
            CHECK_FALSE(meant.empty());
            for (const std::string& part : meant) CHECK(contains(all, part));
        };
        const review::Review review = review::evaluate(*resolution.resolved, "");
        for (const checks::CheckResult& check : review.checks) points_at_parts(check);
        for (const checks::Finding& finding : review.findings) points_at_parts(finding);
    }
}
