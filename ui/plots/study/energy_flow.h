#pragma once

#include "ui/base/palette.h"
#include "ui/plots/base/bar_table.h"

#include <QFontMetricsF>

#include <optional>
#include <vector>

class QPainter;

namespace lobewright::ui {

/// One part of a stream of energy.
struct FlowPart {
    const BarTable::Row* row = nullptr; ///< what it is; its unit may be another than that of `size`
    double size = 0.0;                  ///< ≥ 0, all parts on one scale
    QColor colour;
};

/// What comes into the engine, what becomes of it, and what becomes of the work: each stream splits
/// into the next from left to right. The first part of `out` is the work.
struct EnergyFlow {
    QString inTitle, outTitle, workTitle;
    std::vector<FlowPart> in, out, work;
};

/// The streams, laid out in a place of pixels.
class FlowLayout {
  public:
    struct Node {
        FlowPart part;
        QRectF bar;   ///< where the stream ends; as high as it is large
        QRectF words; ///< of its name and value
    };
    /// None where the place is too small for the words beside the streams.
    static std::optional<FlowLayout> make(const EnergyFlow& flow, const QRectF& place,
                                          const QFontMetricsF& metrics);

    void paint(QPainter& painter, const Palette& tones) const;
    const std::vector<Node>& in() const { return in_; }
    const std::vector<Node>& out() const { return out_; }
    const std::vector<Node>& work() const { return work_; }
    double scale() const { return scale_; } ///< pixels of height for one of `size`

  private:
    void paintStreams(QPainter& painter, const Palette& tones) const;

    EnergyFlow flow_;
    double scale_ = 0.0;
    QRectF inTitle_, outTitle_, workTitle_;
    std::vector<Node> in_, out_, work_;
};

/// "127.5 J" of a row; "none" is never asked for.
QString flowValue(const BarTable::Row& row);

} // namespace lobewright::ui
