// The schemas, held against a schema processor that is not ours.
#include "xml/samples.h"

#include <catch2/catch.hpp>

using namespace toehold;

namespace {

int validate(const std::string& schema, const std::filesystem::path& file, std::string* output = nullptr) {
    return test::run("xmllint --nonet --noout --schema " TOEHOLD_DATA_FOLDER "/schema/" + schema + " " + file.string(),
                     output);
}

void check_valid(const std::string& schema, const std::filesystem::path& file) {
    std::string output;
    const int status = validate(schema, file, &output);
    INFO(output);
    CHECK(status == 0);
}

constexpr int not_valid = 3;  // xmllint's exit status

}  // namespace

TEST_CASE("every good sample and all that is written from it fits the schema", "[process]") {
    const test::TemporaryFolder folder;
    const std::filesystem::path written = folder.path() / "written.xml";
    for (const std::filesystem::path& file : test::good_details()) {
        check_valid("base-detail.xsd", file);
        const xml::DetailRead read = xml::read_detail(file);
        INFO(file << "\n" << test::sentences(read.problems));
        REQUIRE(read.detail);
        test::put_bytes(written, xml::write_detail(*read.detail));
        check_valid("base-detail.xsd", written);
    }
    check_valid("plates.xsd", test::good_file("plates.xml"));
    test::put_bytes(written, xml::write_plates(xml::read_plates(test::good_file("plates.xml")).plates));
    check_valid("plates.xsd", written);
}

TEST_CASE("the schema refuses what the reader refuses for its form", "[process]") {
    for (const char* name : {"length-without-unit.xml", "decimal-comma.xml", "unknown-element.xml", "text-between.xml",
                             "unknown-attribute.xml", "newer-version.xml", "same-hole-twice.xml",
                             "negative-thickness.xml", "many-problems.xml"}) {
        INFO(name);
        CHECK(validate("base-detail.xsd", test::bad_file(name)) == not_valid);
        CHECK_FALSE(xml::read_detail(test::bad_file(name)).detail);
    }
}

TEST_CASE("schema and reader agree on the form of the framing", "[process]") {
    const test::TemporaryFolder folder;
    const std::string framing = test::bytes_of(test::good_file("framing-down-to-the-supports.xml"));
    const auto both = [&](const std::string& from, const std::string& to) {
        const std::string text = test::changed(framing, from, to);
        test::put_bytes(folder.path() / "detail.xml", text);
        const bool schema = validate("base-detail.xsd", folder.path() / "detail.xml") == 0;
        const bool reader = xml::read_detail_text(text, {}).detail.has_value();
        INFO(to << ": schema " << schema << ", reader " << reader);
        CHECK(schema == reader);
        return schema && reader;
    };
    struct Change {
        const char *from, *to;
    };
    for (const Change& good :
         {Change{"stiffness=\"1 kN/mm\"", "stiffness=\"5000 lbf/in\""},
          Change{"<joist id=\"J1\"", "<joist plies=\"1\" id=\"J1\""}, Change{" pull=\"300 lbf\"", ""},
          Change{" sides=\"1\"", ""}, Change{"kind=\"wood-screw\"", "kind=\"lag-screw\""}}) {
        CHECK(both(good.from, good.to));
    }
    for (const Change& bad :
         {Change{"offset=\"8 in\" plies=\"2\"", "offset=\"8 in\" plies=\"5\""}, Change{"sides=\"1\"", "sides=\"3\""},
          Change{"kind=\"bolt\"", "kind=\"rivet\""}, Change{"kind=\"ledger\"", "kind=\"wall\""},
          Change{"<rim id=\"R2\"", "<rim id=\"J1\""}, Change{"<support id=\"S1\"", "<support id=\"B1\""},
          Change{"<end at=\"to\" joist=\"R1\">", "<end at=\"to\" joist=\"S2\">"},
          Change{"stiffness=\"1 kN/mm\"", "stiffness=\"1 kN\""}, Change{" gauge=\"1 in\"", ""},
          Change{" at=\"6 3/4 in\"", ""}, Change{" board=\"5.5 in\"", ""},
          Change{" metal=\"steel-a36\" kind=\"bolt\"", " kind=\"bolt\""}}) {
        CHECK_FALSE(both(bad.from, bad.to));
    }
}

TEST_CASE("schema and reader agree on how a length is written", "[process]") {
    const test::TemporaryFolder folder;
    const auto both = [&](const std::string& height) {
        const std::string text = test::changed(test::plain_detail(), "\"42 in\"", "'" + height + "'");
        test::put_bytes(folder.path() / "detail.xml", text);
        const bool schema = validate("base-detail.xsd", folder.path() / "detail.xml") == 0;
        const bool reader = xml::read_detail_text(text, {}).detail.has_value();
        INFO(height << ": schema " << schema << ", reader " << reader);
        CHECK(schema == reader);
        return schema && reader;
    };
    for (const char* good : {"42 in", "42in", "36.5 inches", "42\"", "3 ft", "3 ft 6 in", "3&apos;-6\"", "3&apos;",
                             "41 3/4 in", "41-3/4\"", "3/4 in", "914.4 mm", "91.4 cm", ".9 m", "1e1 in", "+42 in"}) {
        CHECK(both(good));
    }
    for (const char* bad : {"42", "", "in", "-42 in", "42,5 in", "42 yd", "nan in", "inf in", "0x10 in", "42 in.",
                            "4 2 in", "42 in in", "1/2 mm", "42 lb", "3/0 in x"}) {
        CHECK_FALSE(both(bad));
    }
}
