// The data folder as a whole: it reads without a problem, every row says what it rests on, the schema accepts it, and
// the stock plates can be made.
#include "model/placement.h"
#include "model/validate.h"
#include "support/compare.h"
#include "support/shipped.h"
#include "support/temporary_folder.h"
#include "xml/catalog/catalog_file.h"

#include <cstdlib>
#include <filesystem>
#include <fstream>

using namespace toehold;
using test::shipped_catalog;

namespace {

const std::filesystem::path data_folder = TOEHOLD_DATA_FOLDER;

template <class Row>
void check_sources(const std::vector<Row>& rows) {
    REQUIRE_FALSE(rows.empty());
    for (const Row& item : rows) {
        INFO(item.id);
        CHECK(item.source.text.size() > 10);
        const bool recalled = item.source.text.find("from memory") != std::string::npos;
        // A row rests on the weakest of its numbers: one that says so in words does not call itself published.
        if (recalled) CHECK(item.source.evidence != catalog::Evidence::published);
        if (item.source.evidence == catalog::Evidence::from_memory) CHECK(recalled);
    }
}

/// Exit status of xmllint; 127 when it is not installed.
int validate(const std::string& schema, const std::filesystem::path& file) {
    const std::string command = "xmllint --nonet --noout --schema '" + (data_folder / "schema" / schema).string() +
                                "' '" + file.string() + "' 2>/dev/null";
    return WEXITSTATUS(std::system(command.c_str()));  // NOLINT(bugprone-command-processor,cert-env33-c): a test
}

bool anchors_fit(const model::Hole& hole, double anchor_in) {
    return std::get<model::RoundHole>(hole.shape).diameter_in == anchor_in + 1.0 / 16;
}

/// Above 0 when the way from the first corner to the last turns clockwise as seen from above.
double clockwise_turn(const std::vector<model::Hole>& holes) {
    double twice_area = 0.0;
    for (std::size_t index = 0; index < holes.size(); ++index) {
        const model::Position from = holes[index].center;
        const model::Position to = holes[(index + 1) % holes.size()].center;
        twice_area += from.y_in * to.x_in - from.x_in * to.y_in;
    }
    return twice_area;
}

/// The hole of a bolt is a sixteenth wider.
double widest_anchor_in(double hole_in) {
    for (const double anchor_in : {0.5, 0.4375}) {
        if (hole_in >= anchor_in + 0.0625 - 1e-9) return anchor_in;
    }
    return 0.375;
}

}  // namespace

TEST_CASE("The shipped data reads without a problem", "[catalog][unit]") {
    const xml::CatalogRead read = xml::read_catalog(data_folder);
    for (const model::Problem& problem : read.problems) UNSCOPED_INFO(model::sentence(problem));
    CHECK(read.problems.empty());
}

TEST_CASE("Every row says what its numbers rest on", "[catalog][property]") {
    const catalog::Catalog& all = shipped_catalog();
    check_sources(all.species);
    check_sources(all.grades);
    check_sources(all.lag_screws);
    check_sources(all.wood_screws);
    check_sources(all.bolts);
    check_sources(all.bolt_grades);
    check_sources(all.washers);
    check_sources(all.metals);
    check_sources(all.fillers);
    check_sources(all.decking);
}

TEST_CASE("The schema accepts every shipped catalog", "[catalog][process]") {
    for (const auto& file : std::filesystem::directory_iterator(data_folder / "catalog")) {
        INFO(file.path());
        CHECK(validate("catalog.xsd", file.path()) == 0);
    }
    for (const auto& file : std::filesystem::directory_iterator(data_folder / "plates")) {
        INFO(file.path());
        CHECK(validate("plates.xsd", file.path()) == 0);
    }
}

TEST_CASE("The schema refuses a row without unit, source or known evidence", "[catalog][process][bad-input]") {
    const test::TemporaryFolder folder;
    const std::filesystem::path file = folder.path() / "catalog.xml";
    const auto status = [&](const std::string& washer) {
        std::ofstream(file) << "<catalog xmlns='urn:toehold:catalog:1'><washer " << washer << "/></catalog>";
        return validate("catalog.xsd", file);
    };
    const std::string sizes = "id='w' name='w' outside-diameter='1 in' hole-diameter='7/16 in' ";
    CHECK(status(sizes + "thickness='1/8 in' evidence='assumption' source='a test'") == 0);
    constexpr int refused = 3;
    CHECK(status(sizes + "thickness='0.125' evidence='assumption' source='a test'") == refused);
    CHECK(status(sizes + "thickness='1/8 in' evidence='assumption' source=' '") == refused);
    CHECK(status(sizes + "thickness='1/8 in' evidence='hearsay' source='a test'") == refused);
    CHECK(status(sizes + "thickness='1/8 in' source='a test'") == refused);
}

TEST_CASE("Stock plates can be made and take the anchors they are meant for", "[catalog][property]") {
    REQUIRE(shipped_catalog().stock_plates.size() >= 6);
    for (const model::Plate& plate : shipped_catalog().stock_plates) {
        INFO(plate.id);
        CHECK(model::validate(plate).empty());
        for (const model::Hole& hole : plate.holes) {
            const double anchor_in = widest_anchor_in(std::get<model::RoundHole>(hole.shape).diameter_in);
            CHECK(anchors_fit(hole, anchor_in));
            CHECK(model::edge_distance_in(plate.outline, hole.center) >= 1.75 * anchor_in - 1e-3);
        }
    }
}

TEST_CASE("Holes of stock plates are lettered clockwise from the heel's left", "[catalog][property]") {
    for (const model::Plate& plate : shipped_catalog().stock_plates) {
        INFO(plate.id);
        REQUIRE(plate.holes.size() >= 4);
        char letter = 'A';
        for (const model::Hole& hole : plate.holes) CHECK(hole.id == std::string(1, letter++));
        CHECK(plate.holes.front().center.x_in < 0.0);
        CHECK(plate.holes.front().center.y_in < 0.0);
        CHECK(clockwise_turn(plate.holes) > 0.0);
    }
}
