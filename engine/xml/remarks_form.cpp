#include "xml/remarks_form.h"

#include "model/validate_remarks.h"

#include <array>

namespace toehold::xml {
namespace {

using State = model::Remark::State;

constexpr std::array<Word<State>, 2> states{{{"open", State::open}, {"settled", State::settled}}};

model::Remark read_remark(ElementReader& reader) {
    model::Remark remark;
    remark.about = reader.optional_id("about");
    remark.subject = reader.optional_text("subject");
    remark.by = reader.optional_text("by");
    remark.date = reader.optional_text("date");
    if (reader.has("date") && !model::is_iso_day(remark.date)) {
        reader.report("date is no day of the calendar", "date", "a day such as 2026-11-25");
    }
    remark.state = reader.optional_choice<State>("state", states).value_or(State::open);
    remark.words = reader.text("words");
    return remark;
}

Element remark_element(const model::Remark& remark) {
    Element element("remark");
    element.optional_text("about", remark.about).optional_text("subject", remark.subject);
    element.optional_text("by", remark.by).optional_text("date", remark.date);
    return element.text("state", word_for<State>(remark.state, states)).text("words", remark.words);
}

}  // namespace

std::vector<model::Remark> read_remarks(ElementReader& reader) {
    std::vector<model::Remark> remarks;
    for (ElementReader& item : reader.children("remark")) remarks.push_back(read_remark(item));
    return remarks;
}

Element remarks_element(const std::vector<model::Remark>& remarks) {
    Element element("remarks");
    for (const model::Remark& remark : remarks) element.child(remark_element(remark));
    return element;
}

}  // namespace toehold::xml
