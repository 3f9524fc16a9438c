#include "window/project/project_fields_source.h"

#include "editing/project/project_fields.h"

#include <utility>

namespace toehold::window {

FieldSource project_fields_source(session::ProjectSession& session, std::function<format::Locale()> locale) {
    const auto edit = [&session](const std::string& path, const std::string& text) {
        return editing::set_project_field(session.project(), session.catalog(), session.system(), path, text);
    };
    FieldSource source;
    source.fields = [&session] {
        return editing::project_fields(session.project(), session.catalog(), session.system());
    };
    source.refusal = [edit](const std::string& path, const std::string& text) { return edit(path, text).refusal; };
    source.set = [&session, edit](const std::string& path, const std::string& text) {
        editing::ProjectFieldEdit made = edit(path, text);
        if (!made.project) return made.refusal;
        session.change(made.step, std::move(*made.project));
        return format::Phrase();
    };
    source.selection = [&session] {
        std::vector<model::PartId> parts;
        if (!session.selected().empty()) parts.push_back({model::PartKind::post, session.selected()});
        return parts;
    };
    source.locale = std::move(locale);
    source.say = [&session](const format::Phrase& words) { session.say(words); };
    return source;
}

}  // namespace toehold::window
