#pragma once
// The section of a piece of wood and what it is made of, as joists, rims, blocks and wood posts have it: by the size's
// name or by width and depth, of a catalog's species and grade or of a material the file describes.
#include "model/own_wood.h"
#include "xml/document/element.h"
#include "xml/document/element_reader.h"

#include <string>

namespace toehold::xml {

struct WoodSection {
    double width_in = 0.0, depth_in = 0.0;
    std::string species, grade;
    std::string size;
};

/// Of framing, whose narrow face is up unless `flat` says otherwise.
[[nodiscard]] WoodSection read_framing_section(ElementReader& reader);
void write_framing_section(Element& element, const WoodSection& section);

/// Of a post: the first number of its size is along x.
[[nodiscard]] WoodSection read_post_section(ElementReader& reader);
void write_post_section(Element& element, const WoodSection& section);

/// Thickness of boards, by the name of their size or as it is. The name is kept in `size`.
[[nodiscard]] double read_board_thickness(ElementReader& reader, std::string& size);
void write_board_thickness(Element& element, double thickness_in, const std::string& size);

template <class Member>
[[nodiscard]] WoodSection section_of(const Member& member) {
    return {member.width_in, member.depth_in, member.species, member.grade, member.size};
}
template <class Member>
void set_section(Member& member, const WoodSection& section) {
    member.width_in = section.width_in;
    member.depth_in = section.depth_in;
    member.species = section.species;
    member.grade = section.grade;
    member.size = section.size;
}

[[nodiscard]] model::OwnWood read_material(ElementReader& reader);
[[nodiscard]] Element material_element(const model::OwnWood& wood);

}  // namespace toehold::xml
