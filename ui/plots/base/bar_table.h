#pragma once

#include "ui/base/curve.h"
#include "ui/plots/base/plot_data.h"

#include <QWidget>

#include <vector>

namespace lobewright::ui {

/// A table whose rows carry a bar: name, value, length of the value against the largest of its
/// section or of sections on one scale; the baseline's value as a mark on the bar. Longer than its
/// place: it scrolls.
class BarTable : public QWidget, public DataSource {
    Q_OBJECT

  public:
    struct Row {
        QString label;
        QString unit; ///< metric
        QString help;
        std::optional<double> value; ///< absent: not available
        std::optional<double> before;
        Tone tone = Tone::ink;
    };
    struct Section {
        QString title;
        QString remark; ///< a sentence below the title, may be empty
        std::vector<Row> rows;
        bool oneBar = false; ///< the rows as parts of one bar above them
        double scale = 0.0;  ///< a full bar is at least this, for sections to be compared
    };

    explicit BarTable(QWidget* parent = nullptr);

    void setSections(std::vector<Section> sections);
    const std::vector<Section>& sections() const { return sections_; }

    DataSheet dataSheet() const override;
    QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    /// What is said at the pointer.
    virtual QString helpAt(const QPoint& at) const;

  private:
    struct Place {
        const Row* row;
        QRectF box;
    };
    double paintSection(QPainter& painter, const Section& section, double top);
    double labelWidthOf(const Section& section, double width) const;
    void paintRow(QPainter& painter, const Section& section, const Row& row, const QRectF& box);
    void paintParts(QPainter& painter, const Section& section, const QRectF& box);
    double lineHeight() const;
    void scrollBy(double pixels);

    std::vector<Section> sections_;
    std::vector<Place> places_;
    double scrolled_ = 0.0, contentHeight_ = 0.0;
};

} // namespace lobewright::ui
