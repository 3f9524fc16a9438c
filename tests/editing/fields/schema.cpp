// Nothing the file format can say is out of the window's reach: every element, attribute and word of the schema has its
// field. A name added to the schema fails this until it has one.
#include "editing/fields/schema_map.h"
#include "editing/fields/variants.h"
#include "editing/samples.h"
#include "support/file_bytes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <map>
#include <regex>
#include <set>

using namespace toehold;
using test::by_place;
using test::field_for;

namespace {

struct SchemaName {
    std::string name;                ///< `guard@height` an attribute, `plate/circle` an element
    std::vector<std::string> words;  ///< of an attribute with a closed list
};

std::string schema_text(const std::string& file) {
    const std::string text = test::bytes_of(std::string(TOEHOLD_DATA_FOLDER) + "/schema/" + file);
    std::string plain;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t start = text.find("<!--", at);
        plain += text.substr(at, start - at);
        if (start == std::string::npos) break;
        at = text.find("-->", start) + 3;
    }
    return plain;
}

std::string attribute(const std::string& tag, const std::string& name) {
    std::smatch found;
    return std::regex_search(tag, found, std::regex("\\b" + name + "=\"([^\"]*)\"")) ? found[1].str() : std::string();
}

/// The nearest named type, element or group an item stands in.
std::string holder(const std::vector<std::string>& open) {
    for (auto one = open.rbegin(); one != open.rend(); ++one) {
        if (!one->empty()) return *one;
    }
    return {};
}

const std::string named_words = "#words";

std::vector<SchemaName> schema_names(const std::string& file) {
    const std::string text = schema_text(file);
    const std::set<std::string> holders{"element", "complexType", "group", "attributeGroup"};
    std::vector<SchemaName> names;
    std::vector<std::string> open;
    const std::regex tags("<(/?)xs:([A-Za-z]+)([^>]*?)(/?)>");
    for (std::sregex_iterator tag(text.begin(), text.end(), tags), end; tag != end; ++tag) {
        if ((*tag)[1].length() > 0) {
            open.pop_back();
            continue;
        }
        const std::string kind = (*tag)[2];
        const std::string name = attribute((*tag)[3], "name");
        if (kind == "attribute") names.push_back({holder(open) + "@" + name, {}});
        if (kind == "element") names.push_back({holder(open) + "/" + name, {}});
        // Words of a type with a name of its own are no attribute's.
        const bool of_attribute = std::find(open.begin(), open.end(), named_words) == open.end();
        if (kind == "enumeration" && of_attribute) names.back().words.push_back(attribute((*tag)[3], "value"));
        const bool words = kind == "simpleType" && !name.empty();
        if ((*tag)[4].length() == 0)
            open.push_back(words ? named_words : holders.contains(kind) ? name : std::string());
    }
    return names;
}

/// Each path of any kind of detail, with the words its field offers.
std::map<std::string, std::set<std::string>> every_field() {
    std::map<std::string, std::set<std::string>> all;
    for (const test::Variant& variant : test::field_variants()) {
        for (const editing::Field& field : editing::fields(variant.detail, test::field_catalog(), units::System::us)) {
            std::set<std::string>& words = all[field.path];
            for (const editing::Choice& choice : field.choices) words.insert(choice.value);
        }
    }
    return all;
}

/// An element that is one kind of several must be a word of the field that chooses.
void check_word_of_kind(const std::string& name, const std::string& path,
                        const std::map<std::string, std::set<std::string>>& all) {
    static const std::set<std::string> choosers{"anchors[1]/fastener", "framing/block[B1]/end[from]/connection",
                                                "plate/outline", "plate/hole[A]/shape", "anchors[1]/below"};
    const std::size_t slash = name.find('/');
    if (slash == std::string::npos || !choosers.contains(path)) return;
    INFO("kind " << name);
    CHECK(all.at(path).contains(name.substr(slash + 1)));
}

}  // namespace

TEST_CASE("Every element, attribute and word of the schema has its field", "[property]") {
    const std::map<std::string, std::set<std::string>> all = every_field();
    std::size_t count = 0;
    for (const std::string file : {"base-detail.xsd", "base.xsd", "plate.xsd"}) {
        for (const SchemaName& one : schema_names(file)) {
            INFO(file << ": " << one.name);
            ++count;
            const auto path = field_for().find(one.name);
            CHECK(path != field_for().end());
            if (path == field_for().end() || path->second == by_place) continue;
            INFO("field " << path->second);
            CHECK(all.contains(path->second));
            if (!all.contains(path->second)) continue;
            check_word_of_kind(one.name, path->second, all);
            for (const std::string& word : one.words) {
                INFO("word " << word);
                CHECK(all.at(path->second).contains(word));
            }
        }
    }
    CHECK(count > 190);
}
