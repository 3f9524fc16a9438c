#include "model/mount_words.h"

#include "model/base_detail.h"

namespace toehold::model {
namespace {

using format::Citation;
using format::phrase;

MountWords mount_words_of(const PlateOnDeck& /*mount*/) {
    return {phrase("the bearing plane"),
            phrase("the underside of the plate"),
            phrase("a base that bends"),
            phrase("a rigid base"),
            phrase("moment over the arm from the heel anchors to the edge of the base, or to the opposite row, for a "
                   "push square to the base"),
            phrase("the arm to the edge of the base"),
            phrase("Bearing of the plate on wood is held as a uniform stress about the resultant ({}).",
                   Citation{"NDS 2018 3.10.2"}),
            phrase("the elastic peak at the plate's edge"),
            phrase("Assumed decking and shims are a gap for anchors in lateral load; not specified in the file."),
            phrase("wood decking in bearing around the shank")};
}

MountWords mount_words_of(const SideFastened& /*mount*/) {
    return {phrase("the top of the member the post is fastened to"),
            phrase("the top of the member the post is fastened to"),
            phrase("a post that bends"),
            phrase("a rigid post"),
            phrase("moment over the arm from the fasteners that pull to the far end of the contact with the member, or "
                   "to the opposite row, for a push square to the rail, shared by the fasteners and ties of a row"),
            phrase("the arm to the end of the contact"),
            phrase("Bearing of the post on the member is held as a uniform stress about the resultant ({}).",
                   Citation{"NDS 2018 3.10.2"}),
            phrase("the elastic peak at the end of the contact"),
            phrase("Assumed what lies between post and member is a gap for fasteners in lateral load; not specified in "
                   "the file."),
            phrase("wood between them in bearing around the shank")};
}

}  // namespace

MountWords mount_words(const BaseDetail& detail) {
    return std::visit([](const auto& mount) { return mount_words_of(mount); }, detail.mount);
}

}  // namespace toehold::model
