#include "drawing/annotation/side_forces.h"

#include <algorithm>
#include <cmath>

namespace toehold::drawing {
namespace {

/// Along z and half across, of a contact's outline.
struct Contact {
    double low_z_in = 0.0, high_z_in = 0.0, half_width_in = 0.0;
};

Contact contact_of(const demand::Support& support) {
    Contact contact{support.outline.front().y_in, support.outline.front().y_in, 0.0};
    for (const model::Position& corner : support.outline) {
        contact.low_z_in = std::min(contact.low_z_in, corner.y_in);
        contact.high_z_in = std::max(contact.high_z_in, corner.y_in);
        contact.half_width_in = std::max(contact.half_width_in, std::abs(corner.x_in));
    }
    return contact;
}

FaceBearing bearing_of(const demand::Support& support, const demand::SupportForce& force) {
    constexpr double of_a_triangle = 3.0;  // its center stands a third from its foot
    const Contact contact = contact_of(support);
    const double length = of_a_triangle * (force.at.y_in - force.peak_at.y_in);
    return {support.part,
            force.force_lb,
            force.peak_psi,
            contact.half_width_in,
            std::clamp(force.peak_at.y_in, contact.low_z_in, contact.high_z_in),
            std::clamp(force.peak_at.y_in + length, contact.low_z_in, contact.high_z_in)};
}

}  // namespace

void show_face_forces(Overlay& overlay, const std::vector<demand::Support>& supports,
                      const std::vector<demand::SupportForce>& forces) {
    constexpr double next_to_nothing_lb = 0.5;
    const std::size_t count = std::min(supports.size(), forces.size());
    for (std::size_t index = 0; index < count; ++index) {
        const demand::Support& support = supports[index];
        const bool pressed = forces[index].force_lb > next_to_nothing_lb;
        if (pressed && support.presses.z == 0.0 && !support.outline.empty())
            overlay.bearings.push_back(bearing_of(support, forces[index]));
    }
}

void show_side_forces(Overlay& overlay, const demand::Demand& demand, const demand::State& state) {
    if (!demand.side) return;
    show_face_forces(overlay, demand.supports, state.supports);
    overlay.ties_lb = state.ties_lb;
}

}  // namespace toehold::drawing
