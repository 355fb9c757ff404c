#pragma once

#include "core/claims/claims_check.h"
#include "core/reference/comparison.h"
#include "ui/plots/base/custom_plot.h"
#include "ui/plots/base/end_labels.h"

#include <QString>

#include <vector>

namespace lobewright::ui {

class BandsBehind;

/// What the engines of a comparison are laid over each other by.
enum class ComparedQuantity {
    position,
    leverArm,
    pressure,
    pressureVolume,
    torque,
    speed,
    acceleration,
    torqueCurve, ///< brake torque against speed
    powerCurve   ///< brake power against speed
};
struct ComparedQuantityWord {
    ComparedQuantity quantity;
    const char* key; ///< kept between runs
    QString title;
};
const std::vector<ComparedQuantityWord>& comparedQuantities();
/// Whether a comparison at many speeds is needed.
bool isSpeedCurve(ComparedQuantity quantity);

class KeptView;

/// One quantity of all engines of a comparison; engines are told apart by line and weight.
class ComparisonPlot : public QCustomPlot {
    Q_OBJECT

  public:
    explicit ComparisonPlot(QWidget* parent = nullptr);

    /// One comparison, or one for each speed for the curves against speed.
    void show(const std::vector<study::Comparison>& comparisons, ComparedQuantity quantity);
    /// Points laid over the curves against speed; empty: none.
    void showClaims(const std::vector<study::ClaimedPoint>& points);
    /// Bands to lie behind the cam-track engine; must outlive the plot.
    void setBands(BandsBehind& bands);
    /// Which engines are drawn, by order of study::Compared.
    void setEngineShown(study::Compared engine, bool shown);
    bool isEngineShown(study::Compared engine) const;

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void refill();
    void addCurve(study::Compared engine, const QVector<double>& x, const QVector<double>& y);
    void nameAtEnd(std::vector<EndLabels::Label>& ends, study::Compared engine, double x, double y);
    void addStrokeCurves();
    void addSpeedCurves();
    void addBands();
    QCPGraph* addBandEdges(const QVector<double>& x, const QVector<double>& low,
                           const QVector<double>& high);
    void addClaims();
    void nameAxes();
    void scaleAxes();
    void showAxes(bool shown);
    void applyTones();
    QPen penOf(study::Compared engine) const;

    std::vector<study::Comparison> comparisons_;
    std::vector<study::ClaimedPoint> claims_;
    ComparedQuantity quantity_ = ComparedQuantity::position;
    std::vector<bool> shown_;
    QCPItemText* waiting_ = nullptr;
    BandsBehind* bands_ = nullptr;
    std::vector<QCPGraph*> claimMarks_; ///< by claim, of those drawn now
    KeptView* view_;
    bool hasRoomAtEnds_ = true; ///< for names; else a legend below has them
    bool isNamed_ = true;       ///< published points by a legend, for which a low pane has no room
    EndLabels* ends_;           ///< the engines, beside their curves
};

} // namespace lobewright::ui
