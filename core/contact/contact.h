#pragma once

#include "core/contact/settings.h"
#include "core/loads/loads.h"

#include <array>
#include <optional>

/// Stress, film and life of the rollers on their tracks.
///
/// All stresses are nominal: they take the load as spread evenly over the width. They compare
/// designs and never release one to build.
namespace lobewright::contact {

/// Everything the stage depends on. References must outlive the call.
struct Inputs {
    const mechanism::OpposedPair& pair;
    const loads::Loads& loads;
    const Materials& materials;
    const Lubricant& lubricant;
    const RollerBearing& bearing;
    double omega = 0.0; ///< ω [rad/s], > 0
};

/// Where along the roller.
enum class Station { inner, middle, outer };
inline constexpr Station allStations[] = {Station::inner, Station::middle, Station::outer};

/// The contact at one place of the roller's width, shape (samples). 0 where nothing touches (film:
/// no value there) and where the track is undercut. The edges are those of the loaded width. A
/// crowned roller bears on an ellipse about its middle: the edges see the end of it, if anything,
/// and the film is that of the middle.
struct StationContact {
    double rho = 0.0;       ///< [m]
    Samples relativeRadius; ///< R_rel of the loaded flank [m]; ≤ 0: undercut
    Samples pressure;       ///< peak pressure p₀ [Pa]
    Samples halfWidth;      ///< [m], in the direction of rolling
    Samples slip;           ///< magnitude, ω taken in [m/s]
    Samples film;           ///< least thickness [m]
};

/// A value with its place.
struct Place {
    double value = 0.0;
    double theta = 0.0; ///< [rad]
    Station station = Station::middle;
};

/// Life of the bearing inside a roller; ratings absent in, life absent out.
struct RollerLife {
    double equivalentLoad = 0.0;        ///< P [N]
    double turnsPerShaftTurn = 0.0;     ///< of the roller
    double meanSpeed = 0.0;             ///< of the roller [rad/s]
    std::optional<double> ratingLife;   ///< L₁₀ [million roller turns]
    std::optional<double> life;         ///< at this speed [s]
    std::optional<double> staticSafety; ///< s₀ = C₀/N_max
    std::optional<double> staticStress; ///< in the bearing [Pa] (ISO 76)
};

/// One track with its roller.
struct TrackContact {
    std::array<StationContact, 3> stations; ///< inner edge, middle, outer edge
    Samples peakPressure;                   ///< largest of the stations [Pa]
    Samples deepestShear;                   ///< τ_max at the place of peakPressure [Pa]
    Samples shearDepth;                     ///< its depth [m]
    Samples film;                           ///< least of the stations [m]; 0: no value
    Samples filmRatio;                      ///< λ; 0: no value
    Samples slip;                           ///< largest of the stations [m/s]
    Samples pressureSlip;                   ///< largest pressure × slip at one place [W/m²]

    // Worst places over the samples and both sides of every junction; absent where never loaded.
    std::optional<Place> highestPressure, lowestFilm, lowestFilmRatio;
    Place highestSlip, highestPressureSlip;
    double highestShear = 0.0;      ///< of deepestShear [Pa]
    double highestShearDepth = 0.0; ///< where that is [m]
    std::optional<Place> undercut;  ///< smallest R_rel where it is ≤ 0
    /// Crowned roller: largest long axis of the ellipse over the loaded width; above 1 it is cut
    /// off at the roller's edges and the true stress there is higher.
    std::optional<double> truncation;

    double allowableStress = 0.0; ///< σ_allow [Pa]
    std::optional<double> safety; ///< σ_allow/p₀, a ratio of stresses
    double passesPerTurn = 0.0;   ///< rollers over each point of the track
    double passesPerHour = 0.0;
    std::optional<double> timeToCycles; ///< running time to the cycles of the material table [s]
    RollerLife life;
};

struct Contact {
    double modulus = 0.0; ///< E* [Pa]
    PerEnd<TrackContact> track;
};

/// Errors: material not in the table and no allowable stress given ("/materials/track"); roller
/// without loaded width ("/mechanism/roller/edge_relief_mm").
Result<Contact> solveContact(const Inputs& inputs);

/// The contact over angle and width of one track, angles × widths each. 0 where nothing touches;
/// 0 in film and λ: no value.
struct ContactMap {
    Samples theta;            ///< shape (angles) [rad]
    Samples rho;              ///< shape (widths), inner to outer edge of the loaded width [m]
    Eigen::ArrayXXd pressure; ///< nominal peak pressure [Pa]
    Eigen::ArrayXXd shear; ///< deepest shear below [Pa]; crowned: taken in proportion to pressure
    Eigen::ArrayXXd film;  ///< least thickness [m]; crowned: on the middle line only
    Eigen::ArrayXXd filmRatio; ///< λ
    Eigen::ArrayXXd slip;      ///< magnitude [m/s]
};
/// `widths` ≥ 2; odd for a film of crowned rollers. Crowned rollers: the semi-ellipse of pressure
/// along the contact's middle line.
ContactMap contactMap(const Inputs& inputs, End end, int widths);

/// The worst places at one speed.
struct SpeedContact {
    double omega = 0.0;                ///< [rad/s]
    PerEnd<double> highestPressure;    ///< [Pa]; 0 where never loaded
    PerEnd<double> lowestContactForce; ///< demanded [N]; negative: lifts off or pulls
    PerEnd<std::optional<double>> lowestFilmRatio;
};
/// The worst over a range of speeds [rad/s] with the pressure trace of the running speed held; a
/// speed sweep, which solves the gas anew, replaces it. Errors as solveContact.
Result<std::vector<SpeedContact>> contactOverSpeeds(const loads::Inputs& running,
                                                    const Materials& materials,
                                                    const Lubricant& lubricant,
                                                    const std::vector<double>& speeds);

} // namespace lobewright::contact
