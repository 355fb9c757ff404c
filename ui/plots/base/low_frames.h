#pragma once

#include <QHash>
#include <QObject>
#include <QPointer>

#include <vector>

class QCPAxis;
class QCPAxisRect;
class QCustomPlot;

namespace lobewright::ui {

/// A frame lower than this [px] has no room for numbers: its curves alone are left, and their
/// values stand beside the plot.
constexpr int leastFrame = 90;
/// Height that an axis takes beside a frame above or below it, with its numbers and its name [px].
int roomOf(const QCPAxis& axis);
/// After something of it was taken away or given back while it was being laid out: also where it is
/// drawn only once, on paper.
void layOutAgain(QCustomPlot& plot);
/// As many numbers beside a frame as stand apart from one another; true: another number of them.
bool fitTicks(QCPAxis& axis, int height);

/// Takes the axes from frames that are too low for them, and gives them back; gives axes the
/// numbers and the name that their frame has room for. Owned by the plot.
class LowFrames final : public QObject {
    Q_OBJECT

  public:
    explicit LowFrames(QCustomPlot& plot);

  private:
    void fit();
    bool fitFrame(QCPAxisRect& frame);
    bool fitName(QCPAxis& axis, int room);
    QCustomPlot& plot_;
    std::vector<QPointer<QCPAxis>> taken_;
    struct Shortened {
        QString whole, shown;
    };
    QHash<QCPAxis*, Shortened> shortened_;
};

} // namespace lobewright::ui
