#pragma once

#include "core/claims/claims_basis.h"

#include <string>

namespace lobewright::study {

/// Adds rows to the report and judges them by the bands of the claimed class.
class Findings {
  public:
    Findings(ClaimsReport& report, const ClaimBasis& basis)
        : report_(report), basis_(basis), engine_(engineClass(report.claims)),
          figures_(report.claims.figures), c_(basis.cyclesPerTurn), v_(basis.displacement) {}

    void all();

  private:
    void conversions();
    void cyclesAndDisplacement();
    void speeds();
    /// What a torque given with its own speed leaves to fall; empty: it is not given so.
    Message fallOfTorque(double torqueAtPower) const;
    void pressures();
    /// Where mean pressures are told: ending of the identifiers and both quantities.
    struct PressurePlace {
        const char* id;
        TextId brake, indicated;
    };
    void meanPressure(const PressurePlace& place, double pressure, TextId formula,
                      const Message& substituted, double omega, const Message& note);
    void pistonSpeed();
    void powerDensities();
    void efficiency();
    void air();
    void chargeOf(double airFlow);
    void supply();
    void correction();
    void rating();

    Finding& add(Finding finding) {
        report_.findings.push_back(std::move(finding));
        return report_.findings.back();
    }
    /// One that no band judges.
    Finding& computed(std::string id, Message quantity, Message formula, Message substituted,
                      double value, std::string unit, Message source, Message note = {}) {
        return add({std::move(id),
                    std::move(quantity),
                    std::move(formula),
                    std::move(substituted),
                    value,
                    std::move(unit),
                    {},
                    std::move(source),
                    Verdict::computed,
                    std::move(note)});
    }
    /// With the verdict, the band and its source, by the bands of the claimed class.
    void judged(BandQuantity quantity, Finding finding, double si);
    /// What a speed that is only a bound makes of a figure; empty: it is given.
    Message powerNote() const;
    bool isTwoStroke() const { return basis_.cycle == StrokeCycle::twoStroke; }

    ClaimsReport& report_;
    const ClaimBasis& basis_;
    EngineClass engine_;
    const ClaimedFigures& figures_;
    const std::optional<Derived>& c_;
    const std::optional<Derived>& v_;
};

} // namespace lobewright::study
