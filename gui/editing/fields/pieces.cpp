// The section of a piece of wood and what it is of: the fields joists, rims, blocks, wood posts and boards have alike.
#include "editing/fields/pieces.h"

#include "editing/fields/choices.h"
#include "model/lumber_size.h"

#include <algorithm>
#include <utility>

namespace toehold::editing {
namespace {

/// A name, and what follows from it; an empty text keeps the section and drops the name.
void size_field(Form& form, std::string& size, const std::string& now, const Phrase& help,
                const std::function<void(const model::DressedSize&)>& follow) {
    Field field = form.fresh({"size", phrase("Nominal size"), help}, FieldKind::text);
    field.value = now;
    field.may_be_empty = true;
    form.add(std::move(field), [&size, now, follow](const std::string& text) -> Outcome {
        if (text == now) return {};
        if (!text.empty()) {
            const auto dressed = model::dressed_size(text);
            if (!dressed) return {phrase("No lumber is sold by this size. Type {}.", model::common_sizes)};
            follow(*dressed);
        }
        size = text;
        return {};
    });
}

std::string size_now(const Piece& piece) {
    return model::is_size(piece.size, piece.width_in, piece.depth_in) ? piece.size : std::string();
}

/// On its narrow face, or lying flat as before.
void set_section(const Piece& piece, const model::DressedSize& size) {
    const bool flat = piece.width_in > piece.depth_in;
    const double narrow_in = std::min(size.first_in, size.second_in);
    const double wide_in = std::max(size.first_in, size.second_in);
    piece.width_in = flat ? wide_in : narrow_in;
    piece.depth_in = flat ? narrow_in : wide_in;
}

void flat_field(Form& form, const Piece& piece) {
    if (piece.width_in == piece.depth_in) return;
    const bool flat = piece.width_in > piece.depth_in;
    form.kind({"flat", phrase("Lying flat"), phrase("On its wide face; turns width and depth about.")},
              flat ? "yes" : "no", {{"yes", phrase("Yes")}, {"no", phrase("No")}},
              [piece](const std::string& /*the other of two*/) { std::swap(piece.width_in, piece.depth_in); });
}

}  // namespace

void wood_fields(Form& form, std::string& species, std::string& grade, const std::vector<model::OwnWood>& materials) {
    const catalog::Catalog& catalog = form.catalog();
    std::vector<Choice> choices = row_choices(catalog.species);
    for (const model::OwnWood& wood : materials)
        choices.push_back({wood.id, format::verbatim(wood.id + ": " + wood.name)});
    const std::size_t before = form.entries().size();
    form.pick({"species", phrase("Species"), phrase("Species of the wood, or a material of this detail's own.")},
              species, std::move(choices));
    form.after(before, [&species, &grade, &materials, &catalog] {
        if (catalog::find(materials, species) != nullptr && catalog::find(catalog.species, species) == nullptr) {
            grade.clear();
        } else if (grade.empty()) {
            const std::vector<Choice> grades = grade_choices(catalog, species);
            grade = grades.empty() ? "no-2" : grades.front().value;
        }
    });
    if (grade.empty()) return;
    form.pick({"grade", phrase("Grade"), phrase("Grade of the wood, of those known for the species.")}, grade,
              grade_choices(catalog, species));
}

void piece_fields(Form& form, const Piece& piece) {
    size_field(form, piece.size, size_now(piece),
               phrase("As lumber is ordered, 2x8 or 4x4: sets width and depth to the "
                      "dressed dry sizes. Empty: by width and depth."),
               [piece](const model::DressedSize& size) { set_section(piece, size); });
    flat_field(form, piece);
    form.length({"width", phrase("Width"), phrase("Actual, in plan, of one piece.")}, piece.width_in);
    form.length({"depth", phrase("Depth"), phrase("Actual, upright, of one piece.")}, piece.depth_in);
    wood_fields(form, piece.species, piece.grade, piece.materials);
}

void post_size_field(Form& form, model::WoodPost& post) {
    const bool named = model::is_size(post.size, post.width_in, post.depth_in);
    size_field(
        form, post.size, named ? post.size : std::string(),
        phrase("As lumber is ordered, 4x4 or 6x6: sets width and depth to the dressed dry sizes. Empty: by width "
               "and depth."),
        [&post](const model::DressedSize& size) {
            post.width_in = size.first_in;
            post.depth_in = size.second_in;
        });
}

void board_size_field(Form& form, model::Decking& decking) {
    const auto dressed = model::dressed_size(decking.size);
    const bool named = dressed && std::min(dressed->first_in, dressed->second_in) == decking.thickness_in;
    size_field(
        form, decking.size, named ? decking.size : std::string(),
        phrase("Of wood boards as they are ordered, 5/4x6 or 2x6: sets the thickness. Empty: by thickness."),
        [&decking](const model::DressedSize& size) { decking.thickness_in = std::min(size.first_in, size.second_in); });
}

void plies_field(Form& form, int& plies) {
    form.count({"plies", phrase("Pieces"), phrase("Side by side and nailed together, 1 to 4.")}, plies, {1, 4});
}

}  // namespace toehold::editing
