#pragma once

#include <QToolButton>

namespace lobewright::ui {

/// A result in two lines: its name above, its value below, and behind that how it changed against
/// the baseline.
class ResultCard : public QToolButton {
    Q_OBJECT

  public:
    explicit ResultCard(QWidget* parent = nullptr);

    /// `change` may be empty. Assistive technology reads all of it.
    void setResult(const QString& name, const QString& value, const QString& change);
    const QString& name() const { return name_; }
    const QString& value() const { return value_; }
    const QString& change() const { return change_; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QFont nameFont() const;
    QFont valueFont() const;
    int wide() const; ///< [px]

    QString name_, value_, change_;
    int width_ = 0;
};

} // namespace lobewright::ui
