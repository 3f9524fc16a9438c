#include "catalog/resolve_metal.h"

#include "catalog/closest_ids.h"

namespace toehold::catalog {
namespace {

void apply_certificate(const std::optional<model::Certificate>& certificate, Metal& metal, const std::string& element,
                       model::Problems& problems) {
    if (!certificate || metal.id.empty()) return;
    if (!metal.by_certificate) {
        problems.push_back(
            {{},
             0,
             element + "/certificate",
             {},
             {},
             format::phrase("{} has specified strengths: a certificate does not replace them", metal.name)});
        return;
    }
    metal.yield_psi = certificate->yield_psi;
    metal.ultimate_psi = certificate->ultimate_psi;
    metal.source = {Evidence::published, "certificate: " + certificate->source};
    metal.by_certificate = false;
}

}  // namespace

Metal resolve_metal(const std::string& id, const Catalog& catalog, std::string_view element,
                    model::Problems& problems) {
    const Metal* const row = require(catalog.metals, id, "metal", element, problems);
    if (row == nullptr) return {};
    if (row->by_certificate) {
        problems.push_back({{},
                            0,
                            std::string(element),
                            format::verbatim(id),
                            format::phrase("a metal with strengths of its own; this one is for tube posts, which may "
                                           "carry a certificate"),
                            format::phrase("the standard of this metal guarantees no strength")});
    }
    return *row;
}

Metal resolve_tube_metal(const std::string& id, const std::optional<model::Certificate>& certificate,
                         const Catalog& catalog, const std::string& element, model::Problems& problems) {
    const Metal* const row = require(catalog.metals, id, "metal", element, problems);
    if (row == nullptr) return {};
    Metal metal = *row;
    apply_certificate(certificate, metal, element, problems);
    return metal;
}

}  // namespace toehold::catalog
