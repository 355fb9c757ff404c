#pragma once

#include <QObject>

class QMenu;

namespace lobewright::ui {

/// The one switch that shows or hides the names of parts in the drawings of the engine; kept from
/// one start of the program to the next.
class PartNames : public QObject {
    Q_OBJECT

  public:
    explicit PartNames(QObject* parent = nullptr);

    bool areShown() const { return areShown_; }
    void setShown(bool shown);
    void addAction(QMenu& menu);

  Q_SIGNALS:
    void shownChanged();

  private:
    bool areShown_ = true;
};

} // namespace lobewright::ui
