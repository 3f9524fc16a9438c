#include "job/file.h"

#include "job/answers.h"
#include "job/paths.h"
#include "units/quantity.h"
#include "xml/detail/parts.h"

namespace toehold::job {
namespace {

using format::phrase;

format::Phrase comment_of(const Assumed& assumed) {
    if (assumed.attribute.empty()) return phrase("assumed: {}. {}", assumed.value, assumed.why);
    return phrase("assumed: {} {}. {}", assumed.attribute, assumed.value, assumed.why);
}

}  // namespace

std::string as_file(const Started& started, const format::Locale& locale) {
    xml::Element root = xml::detail_element(started.detail);
    for (const Assumed& assumed : started.assumed)
        element_at(root, steps_to(root, assumed.element)).comment(format::text(comment_of(assumed), locale));
    return xml::document_text(root);
}

std::string customary_name(const Job& job) {
    std::string height = units::exact(job.guard_height_in, units::Kind::length);
    for (char& character : height)
        if (character == ' ' || character == '.') character = '-';
    return "guard-" + height + "-" + word_of(place_answers(), job.place) + ".xml";
}

}  // namespace toehold::job
