#pragma once

#include "ui/base/shown.h"
#include "ui/plots/base/turn_cursor.h"

#include <QTableWidget>

class QMenu;

namespace lobewright::ui {

/// A table that copies itself as text and takes the shaft where a row is.
class LobeTable : public QTableWidget {
    Q_OBJECT

  public:
    explicit LobeTable(const QStringList& columns, QWidget* parent = nullptr);

    /// `theta` [rad]: where the row stands; `help` for every cell.
    void addRow(const QStringList& cells, double theta, const QString& help = {});
    void fitColumns();
    /// All cells, separated by tabs.
    QString text() const;

  Q_SIGNALS:
    void angleWanted(double theta);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
};

/// Characteristic factors of every rise and return, and what jumps where they meet. Follows a drag.
class LobeFactors : public QWidget {
    Q_OBJECT

  public:
    explicit LobeFactors(TurnCursor& cursor, QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    void showGeometry(const GeometryPointer& geometry);
    void addOptions(QMenu& menu);

    LobeTable& factors() { return *factors_; }
    LobeTable& junctions() { return *junctions_; }

  private:
    void nameColumns();
    void fillFactors(const Geometry& geometry, End end);
    void fillJunctions(const Geometry& geometry, End end);

    LobeTable *factors_, *junctions_;
    GeometryPointer geometry_;
};

} // namespace lobewright::ui
