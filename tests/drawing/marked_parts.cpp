#include "drawing/marked_parts.h"

#include "catalog/resolve.h"
#include "review/review.h"
#include "support/compare.h"
#include "support/example.h"
#include "support/parts.h"
#include "xml/catalog/catalog_file.h"
#include "xml/detail/detail_file.h"
#include "xml/document/file.h"

#include <algorithm>
#include <filesystem>

using namespace toehold;
namespace parts = toehold::test::parts;
using Parts = std::vector<model::PartId>;

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
    ledger.kind = model::JoistSupport::Kind::ledger;
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

TEST_CASE("The parts of a detail come in the order of the load path") {
    CHECK(model::parts(framed()) == Parts{parts::push, parts::guard, parts::post, parts::weld, parts::plate,
                                          parts::anchor("A"), parts::anchor("B"), parts::anchor("C"),
                                          parts::anchor("D"), parts::decking, parts::shim(1), parts::block("B1"),
                                          parts::block("B2"), parts::joist("J1"), parts::joist("J2"), parts::rim("R1"),
                                          parts::ledger("S1"), parts::beam("S2")});
}

TEST_CASE("What is not there is no part") {
    model::BaseDetail detail = framed();
    on_deck(detail).weld.reset();
    on_deck(detail).layers = {};
    detail.framing = {};
    CHECK(model::parts(detail) == Parts{parts::push, parts::guard, parts::post, parts::plate, parts::anchor("A"),
                                        parts::anchor("B"), parts::anchor("C"), parts::anchor("D")});
}

TEST_CASE("Every result and finding of the shipped details' reviews points at parts that are there") {
    REQUIRE(demo_details().size() > 10);
    for (const std::filesystem::path& file : demo_details()) {
        const xml::DetailRead read = xml::read_detail(file);
        REQUIRE(read.detail);
        const catalog::Resolution resolution = catalog::resolve(*read.detail, catalogs());
        REQUIRE(resolution.resolved);
        const Parts all = model::parts(*read.detail);
        const auto points_at_parts = [&](const auto& one) {
            INFO(file.filename().string() << ": " << one.id << ", " << model::key(one.part));
            const Parts meant = drawing::marked_parts(one.part, *read.detail);
            CHECK_FALSE(meant.empty());
            for (const model::PartId& part : meant) CHECK(model::contains(all, part));
        };
        const review::Review review = review::evaluate(*resolution.resolved, "");
        for (const checks::CheckResult& check : review.checks) points_at_parts(check);
        for (const checks::Finding& finding : review.findings) points_at_parts(finding);
    }
}
