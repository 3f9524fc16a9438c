#pragma once
// Wood a detail brings with it: glued laminated timber, laminated veneer or strand lumber, or any other member whose
// values stand in an evaluation report or on its grade stamp and in no catalog. The file says which factors its values
// still need; nothing is guessed from its name.
#include <string>

namespace toehold::model {

/// Allowable stress (ASD) reference values, psi, before load duration. Bending, shear and bearing are taken about
/// whichever axis the member is bent, so where the report gives two the smaller is entered; bending alone has both.
struct OwnWood {
    /// What a depth does to bending on the narrow face.
    enum class Volume {
        none,                  ///< the report gives no volume or size factor
        depth,                 ///< (12 in/d)^exponent, as reports on structural composite lumber give it
        glulam,                ///< NDS 2018 Eq. 5.3-1 with x = 10
        glulam_southern_pine,  ///< the same with x = 20
    };
    /// What moisture over 16 % (19 % for sawn lumber) does to the values.
    enum class WetService {
        dry_only,  ///< the report covers dry service alone
        included,  ///< the values entered already hold in wet service
        glulam,    ///< NDS Supplement 2018 Tables 5A to 5D
        sawn,      ///< NDS Supplement 2018 Table 4A
    };
    std::string id;
    std::string name;
    std::string source;             ///< the report or stamp, never empty
    double bending_psi = 0.0;       ///< Fb, load on the narrow face
    double bending_flat_psi = 0.0;  ///< Fb, load on the wide face
    double tension_psi = 0.0;
    double shear_psi = 0.0;
    double compression_perp_psi = 0.0;
    double compression_psi = 0.0;
    double modulus_psi = 0.0;
    double modulus_min_psi = 0.0;
    double specific_gravity = 0.0;  ///< G, or the equivalent one the report gives for dowel-type fasteners
    Volume volume = Volume::none;
    double volume_exponent = 0.0;  ///< with Volume::depth, > 0
    WetService wet_service = WetService::dry_only;
    friend bool operator==(const OwnWood&, const OwnWood&) = default;
};

}  // namespace toehold::model
