// Reading a data folder somebody has changed: every fault is said with its file and line.
#include "support/problems.h"
#include "support/shipped.h"
#include "support/temporary_folder.h"
#include "xml/catalog/catalog_file.h"

#include <filesystem>
#include <fstream>

using namespace toehold;
using test::only_problem;
namespace fs = std::filesystem;

namespace {

/// A copy of the shipped data, gone at the end of the case.
class DataCopy {
  public:
    DataCopy() { fs::copy(TOEHOLD_DATA_FOLDER, folder_.path(), fs::copy_options::recursive); }

    [[nodiscard]] const fs::path& folder() const { return folder_.path(); }
    /// A further catalog file with one row a line, the first on line 2.
    void add(const std::string& rows, const std::string& file = "z-own.xml") const {
        std::ofstream(folder_.path() / "catalog" / file) << "<catalog xmlns=\"urn:toehold:catalog:1\">\n"
                                                         << rows << "\n</catalog>\n";
    }
    void add_plates(const std::string& plates) const {
        std::ofstream(folder_.path() / "plates" / "z-own.xml") << "<plates xmlns=\"urn:toehold:plates:1\">\n"
                                                               << plates << "\n</plates>\n";
    }
    [[nodiscard]] xml::CatalogRead read() const { return xml::read_catalog(folder_.path()); }

  private:
    test::TemporaryFolder folder_;
};

model::Problem problem_with(const std::string& row) {
    const DataCopy data;
    data.add(row);
    model::Problem problem = only_problem(data.read().problems);
    CHECK(fs::path(problem.file).filename() == "z-own.xml");
    CHECK(problem.line == 2);
    return problem;
}

const std::string proof = R"( evidence="assumption" source="made up for a test"/>)";
const std::string own_washer =
    R"(<washer id="own" name="own" outside-diameter="50 mm" hole-diameter="11 mm" thickness="6 mm")" + proof;
const std::string size_values =
    R"( bending="800 psi" tension="500 psi" shear="150 psi" compression-perp="400 psi" compression="900 psi")"
    R"( modulus="1200 ksi" modulus-min="440 ksi")" +
    proof;

}  // namespace

TEST_CASE("A catalog file of one's own adds its rows, in either system of units", "[catalog][unit]") {
    const DataCopy data;
    data.add(own_washer);
    const xml::CatalogRead read = data.read();
    CHECK(read.problems.empty());
    const catalog::WasherSize& washer = test::row(read.catalog.washers, "own");
    CHECK(washer.outside_diameter_in == Approx(50.0 / 25.4).epsilon(1e-12));
    CHECK(washer.source.evidence == catalog::Evidence::assumption);
    CHECK(washer.source.text == "made up for a test");
    CHECK(read.catalog.washers.size() == test::shipped_catalog().washers.size() + 1);
}

TEST_CASE("A grade of one's own for a listed species joins the others", "[catalog][unit]") {
    const DataCopy data;
    data.add(R"(<lumber species="ponderosa-pine"><grade id="no-2" name="No. 2" size-factor="applies">)"
             R"(<size depth-above="1 in" depth-to="12 in")" +
             size_values + "</grade></lumber>");
    const xml::CatalogRead read = data.read();
    CHECK(read.problems.empty());
    const catalog::LumberGrade* const grade = catalog::find_grade(read.catalog, "ponderosa-pine", "no-2", {1.5, 5.5});
    REQUIRE(grade != nullptr);
    CHECK(grade->modulus_psi == 1.2e6);
    CHECK(grade->size_factor == catalog::SizeFactor::table_4a);
}

TEST_CASE("An id another file has is refused, and that place is told", "[catalog][bad-input]") {
    const model::Problem problem =
        problem_with(R"(<metal id="steel-a36" name="x" kind="carbon-steel" yield="30 ksi" ultimate="50 ksi")"
                     R"( modulus="29000 ksi")" +
                     proof);
    CHECK(problem.element == "metal[steel-a36]");
    CHECK(format::english(problem.found) == "steel-a36");
    CHECK(format::english(problem.message).find("metals.xml:") != std::string::npos);
}

TEST_CASE("An id twice in one file is said once", "[catalog][bad-input]") {
    const DataCopy data;
    data.add(own_washer + "\n" + own_washer);
    const model::Problem problem = only_problem(data.read().problems);
    CHECK(problem.line == 3);
    CHECK(format::english(problem.message).find("line 2") != std::string::npos);
}

TEST_CASE("A plate's id is unique over all plate files", "[catalog][bad-input]") {
    const DataCopy data;
    data.add_plates(R"(<plate id="plate-5x5-3/8" metal="steel-a36" thickness="1/2 in"><circle diameter="5 in"/>)"
                    R"(<hole id="A" x="2 in" y="0 in" diameter="7/16 in"/></plate>)");
    const model::Problem problem = only_problem(data.read().problems);
    CHECK(fs::path(problem.file).filename() == "z-own.xml");
    CHECK(problem.line == 2);
    CHECK(format::english(problem.message).find("steel.xml:") != std::string::npos);
}

TEST_CASE("A row that names a metal or species no file has is refused with the nearest ids", "[catalog][bad-input]") {
    const model::Problem screw =
        problem_with(R"(<wood-screw id="own" name="x" diameter="1/4 in" root-diameter="0.2 in")"
                     R"( head-diameter="1/2 in" bending-yield="70 ksi" metal="steel-a63")" +
                     proof);
    CHECK(screw.element == "wood-screw[own]");
    CHECK(format::english(screw.found) == "steel-a63");
    CHECK(format::english(screw.accepted).find("steel-a36") != std::string::npos);
    const model::Problem boards = problem_with(
        R"(<decking id="own" name="x" kind="wood" modulus-perp="60 ksi" may-bear="yes" species="larch")" + proof);
    CHECK(format::english(boards.found) == "larch");
    const DataCopy data;
    data.add_plates(R"(<plate id="own" metal="tin" thickness="1/2 in"><circle diameter="5 in"/>)"
                    R"(<hole id="A" x="2 in" y="0 in" diameter="7/16 in"/></plate>)");
    CHECK(format::english(only_problem(data.read().problems).found) == "tin");
}

TEST_CASE("A row is refused without unit, source or known evidence, and with anything unknown",
          "[catalog][bad-input]") {
    const std::string start = R"(<washer id="own" name="x" outside-diameter="2 in" hole-diameter="7/16 in")";
    CHECK(format::english(problem_with(start + R"( thickness="0.25")" + proof).message) == "thickness has no unit");
    CHECK(format::english(problem_with(start + R"( thickness="1,5 in")" + proof).found) == "1,5 in");
    CHECK(format::english(problem_with(start + R"( thickness="1/4 in" evidence="assumption"/>)").accepted) ==
          "some text");
    CHECK(format::english(problem_with(start + R"( thickness="1/4 in" evidence="hearsay" source="x"/>)").found) ==
          "hearsay");
    CHECK(format::english(problem_with(start + R"( thickness="1/4 in" maker="x")" + proof).found) == "maker");
    CHECK(format::english(problem_with("<nut/>").found) == "nut");
}

TEST_CASE("Numbers that contradict each other are refused", "[catalog][bad-input]") {
    CHECK(format::english(
              problem_with(
                  R"(<washer id="w" name="x" outside-diameter="1 in" hole-diameter="1 in" thickness="1/8 in")" + proof)
                  .message) == "the hole leaves no washer");
    CHECK(format::english(problem_with(R"(<metal id="m" name="x" kind="carbon-steel" yield="60 ksi" ultimate="50 ksi")"
                                       R"( modulus="29000 ksi")" +
                                       proof)
                              .found) == "60 ksi");
    CHECK(format::english(problem_with(R"(<metal id="m" name="x" kind="aluminum" yield="30 ksi" ultimate="40 ksi")"
                                       R"( modulus="10100 ksi")" +
                                       proof)
                              .message)
              .find("aluminum needs its strength beside a weld") == 0);
    CHECK(format::english(
              problem_with(R"(<bolt id="b" name="x" diameter="1/2 in" threads-per-inch="1" nut-width="3/4 in")"
                           R"( bending-yield="45 ksi")" +
                           proof)
                  .found) == "1");
    CHECK(format::english(problem_with(R"(<species id="s" name="x" specific-gravity="50")" + proof).found) == "50");
}

TEST_CASE("What a metal or a grade has apart comes whole, and names a filler that is there", "[catalog][bad-input]") {
    const std::string alloy = R"(<metal id="m" name="x" kind="aluminum" yield="30 ksi" ultimate="40 ksi")"
                              R"( modulus="10100 ksi" welded-yield="15 ksi" welded-ultimate="24 ksi")";
    CHECK(format::english(problem_with(alloy + R"( softer-filler="er4043")" + proof).message).find("go together") !=
          std::string::npos);
    const std::string yield = R"( softer-above="3/8 in" softer-yield="11 ksi")";
    CHECK(format::english(problem_with(alloy + R"( softer-filler="er4034")" + yield + proof).found) == "er4034");
    CHECK(format::english(
              problem_with(alloy + R"( softer-filler="er4043" softer-above="3/8 in" softer-yield="16 ksi")" + proof)
                  .found) == "16 ksi");
    CHECK(format::english(problem_with(R"(<bolt-grade id="g" name="x" nominal-tension="75 ksi" nominal-shear="45 ksi")"
                                       R"( larger-above="5/8 in")" +
                                       proof)
                              .message)
              .find("go together") != std::string::npos);
    const DataCopy data;
    data.add(alloy + R"( softer-filler="er4043")" + yield + proof);
    const xml::CatalogRead read = data.read();
    CHECK(read.problems.empty());
    CHECK(test::row(read.catalog.metals, "m").softer_weld.value().yield_psi == 11000.0);
}

TEST_CASE("Size classes of a grade share no depth", "[catalog][bad-input]") {
    const std::string grade = R"(<lumber species="ponderosa-pine"><grade id="no-1" name="x" size-factor="included">)"
                              R"(<size depth-above="1 in" depth-to="5 in")" +
                              size_values + R"(<size depth-above="4 in" depth-to="6 in")" + size_values +
                              "</grade></lumber>";
    const model::Problem problem = problem_with(grade);
    CHECK(problem.element == "lumber[ponderosa-pine]/grade[no-1]/size[4 in]");
    CHECK(format::english(problem.message) == "the size class overlaps another of this grade");
}

TEST_CASE("A broken or foreign file is told by name and the others are still read", "[catalog][bad-input]") {
    const DataCopy data;
    std::ofstream(data.folder() / "catalog" / "z-own.xml") << "<catalog xmlns=\"urn:toehold:catalog:1\"><metal";
    const xml::CatalogRead broken = data.read();
    REQUIRE_FALSE(broken.problems.empty());
    CHECK(fs::path(broken.problems.front().file).filename() == "z-own.xml");
    CHECK(broken.catalog.metals.size() == test::shipped_catalog().metals.size());
    std::ofstream(data.folder() / "catalog" / "z-own.xml") << "<catalog xmlns=\"urn:toehold:catalog:2\"/>";
    CHECK(format::english(only_problem(data.read().problems).accepted) == "urn:toehold:catalog:1");
    std::ofstream(data.folder() / "catalog" / "z-own.xml") << "";
    CHECK(fs::path(only_problem(data.read().problems).file).filename() == "z-own.xml");
}

TEST_CASE("Files that are not XML by name are left alone", "[catalog][unit]") {
    const DataCopy data;
    std::ofstream(data.folder() / "catalog" / "notes.txt") << "not a catalog";
    CHECK(data.read().problems.empty());
}

TEST_CASE("A data folder that is not there or empty is a problem", "[catalog][bad-input]") {
    const xml::CatalogRead missing = xml::read_catalog("/nowhere/at/all");
    REQUIRE(missing.problems.size() == 2);
    CHECK(fs::path(missing.problems[0].file) == "/nowhere/at/all/catalog");
    CHECK(fs::path(missing.problems[1].file) == "/nowhere/at/all/plates");
    const DataCopy data;
    fs::remove_all(data.folder() / "plates");
    fs::create_directory(data.folder() / "plates");
    CHECK(format::english(only_problem(data.read().problems).message) == "the folder holds no XML file");
}
