// Looking up everything else a detail names, and what is said when an id is not known.
#include "catalog/resolve.h"
#include "catalog/catalog.h"
#include "support/example_detail.h"
#include "support/problems.h"
#include "support/shipped.h"

using namespace toehold;
using test::example_detail;
using test::shipped_catalog;

namespace {

model::Problems problems_of(const model::BaseDetail& detail) {
    const catalog::Resolution resolution = catalog::resolve(detail, shipped_catalog());
    CHECK(resolution.resolved.has_value() == resolution.problems.empty());
    return resolution.problems;
}

model::Problem only_problem(const model::BaseDetail& detail) { return test::only_problem(problems_of(detail)); }

bool lists(const model::Problem& problem, const std::string& id) {
    constexpr std::string_view cut = "closest: ";
    std::string ids = format::english(problem.accepted);
    if (ids.starts_with(cut)) ids.erase(0, cut.size());
    return (", " + ids + ", ").find(", " + id + ", ") != std::string::npos;
}

model::WoodPost wood_post(double side_in) {
    model::WoodPost post;
    post.width_in = side_in;
    post.depth_in = side_in;
    post.species = "southern-pine";
    post.grade = "no-2";
    post.shoe.metal = "steel-a36";
    return post;
}

}  // namespace

TEST_CASE("A sound detail is resolved whole", "[catalog][unit]") {
    const catalog::Resolution resolution = catalog::resolve(example_detail(), shipped_catalog());
    REQUIRE(resolution.resolved);
    const catalog::Resolved& resolved = *resolution.resolved;
    CHECK(resolved.detail == example_detail());
    CHECK(on_deck(resolved).plate_metal.id == "steel-a36");
    CHECK(resolved.post_metal.id == "steel-a500-b");
    CHECK_FALSE(resolved.post_species);
    REQUIRE(on_deck(resolved).filler);
    CHECK(on_deck(resolved).filler->strength_psi == 70000.0);
    REQUIRE(on_deck(resolved).decking);
    CHECK(on_deck(resolved).decking->species == "southern-pine");
    REQUIRE(resolved.blocks.size() == 2);
    CHECK(resolved.blocks[1].grade.bending_psi == 1000.0);
    REQUIRE(resolved.joists);
    CHECK(resolved.joists->grade.bending_psi == 800.0);
}

TEST_CASE("What a detail leaves out stays out", "[catalog][unit]") {
    model::BaseDetail detail = example_detail();
    on_deck(detail).weld.reset();
    on_deck(detail).layers = {};
    detail.framing = {};
    const catalog::Resolution resolution = catalog::resolve(detail, shipped_catalog());
    REQUIRE(resolution.resolved);
    CHECK_FALSE(on_deck(*resolution.resolved).filler);
    CHECK_FALSE(on_deck(*resolution.resolved).decking);
    CHECK_FALSE(resolution.resolved->joists);
    CHECK(resolution.resolved->blocks.empty());
    CHECK_FALSE(resolution.resolved->anchors.at(0).seat);
}

TEST_CASE("A wood post brings species, grade and its shoe's metal", "[catalog][unit]") {
    model::BaseDetail detail = example_detail();
    detail.post = wood_post(3.5);
    const catalog::Resolution resolution = catalog::resolve(detail, shipped_catalog());
    REQUIRE(resolution.resolved);
    CHECK(resolution.resolved->post_metal.id == "steel-a36");
    REQUIRE(resolution.resolved->post_species);
    CHECK(resolution.resolved->post_species->specific_gravity == 0.55);
    REQUIRE(resolution.resolved->post_grade);
    CHECK(resolution.resolved->post_grade->bending_psi == 1100.0);
}

TEST_CASE("An unknown lag screw is named once for its group, with the sizes that come nearest",
          "[catalog][bad-input]") {
    model::BaseDetail detail = example_detail();
    on_deck(detail).anchors.front().fastener = model::LagScrew{"lag-38", 6.0, {}};
    const model::Problem problem = only_problem(detail);
    CHECK(problem.element == "anchors[1]/lag-screw");
    CHECK(format::english(problem.found) == "lag-38");
    CHECK(format::english(problem.accepted).starts_with("closest: lag-3/8, "));
    CHECK(format::english(problem.message) == "no lag screw in the catalogs has this id");
}

TEST_CASE("What the boards' report gives stands before the catalog's, and packing brings its material",
          "[catalog][unit]") {
    model::BaseDetail detail = example_detail();
    model::Layers& layers = on_deck(detail).layers;
    layers.decking->material = "composite-generic";
    layers.decking->bearing_psi = 410.0;
    layers.packing = model::Packing{model::PackingShape::round, 1.5, 0.0, "packing-aluminum", 0.0, {}};
    const catalog::Resolution resolution = catalog::resolve(detail, shipped_catalog());
    REQUIRE(resolution.resolved);
    const catalog::PlateOnDeck& mount = on_deck(*resolution.resolved);
    CHECK(mount.decking->may_bear);
    CHECK(mount.decking->bearing_psi == 410.0);
    CHECK(mount.decking->modulus_perp_psi == 50000.0);  // the catalog's
    REQUIRE(mount.packing);
    CHECK(mount.packing->kind == catalog::DeckingKind::metal);
    layers.packing->material = "packing-tin";
    CHECK(only_problem(detail).element == "layers/packing");
}

TEST_CASE("Every unknown id is said with the element that names it", "[catalog][bad-input]") {
    model::BaseDetail detail = example_detail();
    on_deck(detail).plate.metal = "a36";
    detail.post = model::RoundTube{2.0, 0.125, "steel-a500"};
    on_deck(detail).weld->filler = "e71";
    on_deck(detail).layers.decking->material = "wood-southernpine";
    on_deck(detail).layers.shims = {{"shim-stainless", 0.1}, {"shim-oak", 0.1}};
    detail.framing.blocks[1].species = "southern-yellow-pine";
    detail.framing.joists->grade = "no-4";
    on_deck(detail).anchors = {
        {{"A"}, model::ThroughBolt{"bolt-3/8in", "a308", model::Washer{"washer-3/8"}}, {}, ""},
        {{"B"}, model::WoodScrew{"wood-screw-11", 3.0, {}}, model::Washer{"uss"}, ""},
        {{"C"}, model::ThroughBolt{"bolt-3/8", "a307", model::BackingPlate{2, 2, 0.25, "tin"}}, {}, ""}};
    const std::pair<const char*, const char*> expected[] = {{"plate", "steel-a36"},
                                                            {"post", "steel-a500-b"},
                                                            {"weld", "e70"},
                                                            {"anchors[1]/through-bolt/washer-below", "washer-wide-3/8"},
                                                            {"anchors[1]/through-bolt", "bolt-3/8"},
                                                            {"anchors[1]/through-bolt", "a307"},
                                                            {"anchors[2]/wood-screw", "wood-screw-10"},
                                                            {"anchors[2]/washer", ""},
                                                            {"anchors[3]/through-bolt/backing-plate", ""},
                                                            {"layers/decking", "wood-southern-pine"},
                                                            {"layers/shim[2]", ""},
                                                            {"framing/block[B2]", "southern-pine"},
                                                            {"framing/joists", "no-2"}};
    const model::Problems problems = problems_of(detail);
    REQUIRE(problems.size() == std::size(expected));
    for (std::size_t index = 0; index < problems.size(); ++index) {
        INFO(model::sentence(problems[index]));
        CHECK(problems[index].element == expected[index].first);
        CHECK_FALSE(problems[index].found.empty());
        CHECK_FALSE(problems[index].accepted.empty());
        if (*expected[index].second != '\0') CHECK(lists(problems[index], expected[index].second));
    }
}

TEST_CASE("A plate from another file is named by its reference", "[catalog][bad-input]") {
    model::BaseDetail detail = example_detail();
    on_deck(detail).plate_reference = model::PlateReference{"plates.xml", "P1", "", ""};
    on_deck(detail).plate.metal = "a36";
    CHECK(only_problem(detail).element == "plate-from");
}

TEST_CASE("A species without design values names those that have them", "[catalog][bad-input]") {
    model::BaseDetail detail = example_detail();
    detail.framing.blocks[0].species = "ponderosa-pine";
    const model::Problem problem = only_problem(detail);
    CHECK(problem.element == "framing/block[B1]");
    CHECK(format::english(problem.found) == "ponderosa-pine");
    CHECK(lists(problem, "southern-pine"));
    CHECK(lists(problem, "hem-fir"));
    CHECK_FALSE(lists(problem, "ponderosa-pine"));
}

TEST_CASE("A depth no size class holds names the depths that are listed", "[catalog][bad-input]") {
    model::BaseDetail detail = example_detail();
    detail.framing.joists->grade = "stud";
    const model::Problem problem = only_problem(detail);
    CHECK(problem.element == "framing/joists");
    CHECK(format::english(problem.found) == "9 1/4 in");
    CHECK(format::english(problem.accepted).find("over 1 in to 4 in") != std::string::npos);
    CHECK(format::english(problem.accepted).find("over 4 in to 6 in") != std::string::npos);
}

TEST_CASE("A member lying flat is graded by its wider face", "[catalog][unit]") {
    model::BaseDetail detail = example_detail();
    detail.framing.blocks[0].width_in = 9.25;
    detail.framing.blocks[0].depth_in = 1.5;
    const catalog::Resolution resolution = catalog::resolve(detail, shipped_catalog());
    REQUIRE(resolution.resolved);
    CHECK(resolution.resolved->blocks[0].grade.bending_psi == 800.0);
}

TEST_CASE("A 6x6 post has the values of timbers, not of dimension lumber", "[catalog][memory]") {
    // NDS Supplement 2018 Table 4D (memory): southern pine No. 2 posts and timbers 850 psi; 5x5 and larger.
    model::BaseDetail detail = example_detail();
    detail.post = wood_post(5.5);
    const catalog::Resolution resolution = catalog::resolve(detail, shipped_catalog());
    REQUIRE(resolution.resolved);
    CHECK(resolution.resolved->post_grade->bending_psi == 850.0);
    CHECK(resolution.resolved->post_grade->use == catalog::WoodUse::posts_and_timbers);
}

TEST_CASE("A grade that timbers do not have is refused for one", "[catalog][bad-input]") {
    model::BaseDetail detail = example_detail();
    detail.post = wood_post(5.5);
    std::get<model::WoodPost>(detail.post).grade = "no-3";
    const model::Problem problem = only_problem(detail);
    CHECK(problem.element == "post");
    CHECK(format::english(problem.found) == "5 1/2 in thick, 5 1/2 in wide");
    CHECK(format::english(problem.message) ==
          "southern-pine no-3 is listed for dimension lumber, and this member is a timber");
}

TEST_CASE("A member without a grade is of a material of the file's own", "[catalog][unit]") {
    model::BaseDetail detail = example_detail();
    model::OwnWood lvl;
    lvl.id = "LVL";
    lvl.name = "1.9E LVL";
    lvl.source = "invented report";
    lvl.bending_psi = 2600.0;
    lvl.bending_flat_psi = 2250.0;
    lvl.specific_gravity = 0.5;
    lvl.modulus_psi = 1.9e6;
    detail.framing.materials = {lvl};
    detail.framing.blocks[0].species = "LVL";
    detail.framing.blocks[0].grade.clear();
    const catalog::Resolution resolution = catalog::resolve(detail, shipped_catalog());
    REQUIRE(resolution.resolved);
    const catalog::MemberMaterial& wood = resolution.resolved->blocks[0];
    CHECK(wood.species.specific_gravity == 0.5);
    CHECK(wood.grade.use == catalog::WoodUse::engineered);
    CHECK(wood.grade.engineered->bending_flat_psi == 2250.0);
    CHECK(wood.grade.source.text == "invented report");
    detail.framing.blocks[0].species = "LLV";
    const model::Problem problem = only_problem(detail);
    CHECK(problem.element == "framing/block[B1]");
    CHECK(lists(problem, "LVL"));
}

TEST_CASE("A hole smaller than its anchor is said for each such hole", "[catalog][bad-input]") {
    model::BaseDetail detail = example_detail();
    on_deck(detail).plate.holes[1].shape = model::RoundHole{0.3125};
    on_deck(detail).plate.holes[3].shape = model::Slot{1.0, 0.25, 0.0};
    on_deck(detail).plate.holes[0].shape = model::RoundHole{0.375};
    const model::Problems problems = problems_of(detail);
    REQUIRE(problems.size() == 2);
    CHECK(problems[0].element == "plate/hole[B]");
    CHECK(format::english(problems[0].found) == "5/16 in");
    CHECK(format::english(problems[0].accepted) == "3/8 in or more");
    CHECK(problems[1].element == "plate/slot[D]");
}

TEST_CASE("A hole the head slips through needs a washer", "[catalog][bad-input]") {
    model::BaseDetail detail = example_detail();
    on_deck(detail).plate.holes[2].shape = model::RoundHole{0.5625};
    CHECK(format::english(only_problem(detail).message) == "the head of the anchor slips through hole C");
    on_deck(detail).anchors.front().washer = model::Washer{"washer-wide-3/8"};
    CHECK(problems_of(detail).empty());
    on_deck(detail).plate.holes[2].shape = model::RoundHole{1.0};
    CHECK(format::english(only_problem(detail).message) == "the washer of the anchor slips through hole C");
}

TEST_CASE("A washer too small for its fastener is refused", "[catalog][bad-input]") {
    model::BaseDetail detail = example_detail();
    on_deck(detail).anchors.front().washer = model::Washer{"washer-wide-1/4"};
    const model::Problem problem = only_problem(detail);
    CHECK(problem.element == "anchors[1]/washer");
    CHECK(format::english(problem.found) == "washer-wide-1/4, hole 5/16 in");
    CHECK(format::english(problem.accepted) == "a washer with a hole of 3/8 in or more");
}

TEST_CASE("Empty catalogs make every id unknown and nothing else go wrong", "[catalog][bad-input]") {
    const catalog::Resolution resolution = catalog::resolve(example_detail(), {});
    CHECK_FALSE(resolution.resolved);
    for (const model::Problem& problem : resolution.problems) CHECK(problem.accepted.empty());
    CHECK(resolution.problems.size() == 8);
}

TEST_CASE("A certificate gives what a tube's standard does not, and nothing else", "[catalog][unit]") {
    model::BaseDetail detail = example_detail();
    model::RectangularTube tube{2.0, 2.0, 0.125, "steel-a513"};
    detail.post = tube;
    const catalog::Resolution without = catalog::resolve(detail, shipped_catalog());
    REQUIRE(without.resolved);
    CHECK(without.resolved->post_metal.by_certificate);
    tube.certificate = model::Certificate{50000.0, 60000.0, "heat 7, invented"};
    detail.post = tube;
    const catalog::Resolution with = catalog::resolve(detail, shipped_catalog());
    REQUIRE(with.resolved);
    CHECK_FALSE(with.resolved->post_metal.by_certificate);
    CHECK(with.resolved->post_metal.yield_psi == 50000.0);
    CHECK(with.resolved->post_metal.source.text == "certificate: heat 7, invented");
    // A500 has strengths of its own; a plate has no certificate.
    tube.metal = "steel-a500-b";
    detail.post = tube;
    CHECK(only_problem(detail).element == "post/certificate");
    detail = example_detail();
    on_deck(detail).plate.metal = "steel-a513";
    CHECK(only_problem(detail).element == "plate");
}

TEST_CASE("The foot's metal is the stub's where the post slides over one", "[catalog][unit]") {
    model::BaseDetail detail = example_detail();
    model::RectangularTube tube{2.0, 2.0, 0.125, "steel-a500-b"};
    tube.stub = model::Stub{1.6875, 1.6875, 0.0, 6.0, "steel-a36"};
    detail.post = tube;
    const catalog::Resolution resolution = catalog::resolve(detail, shipped_catalog());
    REQUIRE(resolution.resolved);
    CHECK(foot_metal(*resolution.resolved).id == "steel-a36");
    CHECK(resolution.resolved->post_metal.id == "steel-a500-b");
}
