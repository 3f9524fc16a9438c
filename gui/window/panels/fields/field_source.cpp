#include "window/panels/fields/field_source.h"

#include "session/session.h"

namespace toehold::window {

FieldSource field_source(session::Session& session) {
    const auto edit = [&session](const std::string& path, const std::string& text) {
        return editing::set_field(session.detail(), session.catalog(), session.display().system, path, text);
    };
    FieldSource source;
    source.fields = [&session] {
        return editing::fields(session.detail(), session.catalog(), session.display().system);
    };
    source.refusal = [edit](const std::string& path, const std::string& text) { return edit(path, text).refusal; };
    source.set = [&session, edit](const std::string& path, const std::string& text) {
        editing::FieldEdit made = edit(path, text);
        if (!made.detail) return made.refusal;
        session.change(made.step, std::move(*made.detail));
        session.rest();
        return format::Phrase();
    };
    source.selection = [&session] { return session.selection(); };
    source.locale = [&session] { return session.locale(); };
    source.say = [&session](const format::Phrase& words) { session.say(words); };
    return source;
}

}  // namespace toehold::window
