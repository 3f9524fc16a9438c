// Compiled catalogues as GNU gettext writes them.
#include "format/catalogue.h"

#include "support/file_bytes.h"
#include "support/temporary_folder.h"

#include <catch2/catch.hpp>

#include <cstdlib>

using toehold::format::read_catalogue;

namespace {}  // namespace

TEST_CASE("A catalogue compiled by msgfmt is read", "[process]") {
    const toehold::test::TemporaryFolder folder;
    const std::filesystem::path source = folder.path() / "fr.po", compiled = folder.path() / "fr.mo";
    put_bytes(
        source,
        "msgid \"\"\nmsgstr \"Content-Type: text/plain; charset=UTF-8\\n\"\n\n"
        "msgid \"anchor {}\"\nmsgstr \"ancrage {}\"\n\nmsgid \"two\\nlines\"\nmsgstr \"deux\\nlignes\"\n\n"
        "msgid \"one joist\"\nmsgid_plural \"many joists\"\nmsgstr[0] \"une solive\"\nmsgstr[1] \"des solives\"\n");
    REQUIRE(std::system(("msgfmt -o " + compiled.string() + " " + source.string()).c_str()) == 0);
    const auto catalogue = read_catalogue(compiled);
    REQUIRE(catalogue);
    REQUIRE(catalogue->find("anchor {}"));
    CHECK(*catalogue->find("anchor {}") == "ancrage {}");
    CHECK(*catalogue->find("two\nlines") == "deux\nlignes");
    CHECK(*catalogue->find("one joist") == "une solive");
    CHECK(catalogue->find("anchor A") == nullptr);
    CHECK(catalogue->find("") == nullptr);
}

TEST_CASE("A file that is cut or is no catalogue gives none", "[bad-input]") {
    const toehold::test::TemporaryFolder folder;
    const std::filesystem::path source = folder.path() / "fr.po", compiled = folder.path() / "fr.mo";
    CHECK(read_catalogue(folder.path() / "absent.mo") == nullptr);
    put_bytes(source, "msgid \"\"\nmsgstr \"Language: fr\\n\"\n\nmsgid \"joist\"\nmsgstr \"solive\"\n");
    REQUIRE(std::system(("msgfmt --no-hash -o " + compiled.string() + " " + source.string()).c_str()) == 0);
    const std::string whole = bytes_of(compiled);
    // The last byte is the zero behind the last text, which no length counts.
    for (std::size_t length = 0; length + 1 < whole.size(); ++length) {
        put_bytes(compiled, whole.substr(0, length));
        CHECK(read_catalogue(compiled) == nullptr);
    }
    put_bytes(compiled, "PK" + whole.substr(2));
    CHECK(read_catalogue(compiled) == nullptr);
}
