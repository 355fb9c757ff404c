#pragma once

#include "ui/base/shown.h"
#include "ui/scene/base/phase.h"

#include <QSlider>

namespace lobewright::ui {

/// The turn of the shaft as a slider: phases of the cycle of cylinder 1 in their colours, a tick
/// for each event, and the present angle. A click goes there. Values are tenths of a degree.
class Scrubber : public QSlider {
    Q_OBJECT

  public:
    static constexpr int perDegree = 10;

    explicit Scrubber(QWidget* parent = nullptr);

    void showGeometry(const GeometryPointer& geometry);

    struct Stretch {
        double from = 0.0, to = 0.0; ///< [rad], of one turn
        Phase phase = Phase::compression;
    };
    const std::vector<Stretch>& stretches() const { return stretches_; }
    struct Tick {
        double theta = 0.0; ///< [rad]
        QString name;       ///< in full
    };
    const std::vector<Tick>& ticks() const { return ticks_; }
    double x(double theta) const; ///< [px]

    QSize sizeHint() const override { return {320, 30}; }
    QSize minimumSizeHint() const override { return {120, 30}; }

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;

  private:
    int valueAt(double x) const;
    QString wordsAt(double x) const;

    std::vector<Stretch> stretches_;
    std::vector<Tick> ticks_;
};

} // namespace lobewright::ui
