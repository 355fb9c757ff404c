#pragma once

#include <QWidget>

namespace lobewright::ui {

/// Lies over results that belong to an earlier input than the one shown beside them: a frame, and
/// the reason in words. Lets the mouse through.
class StaleMark : public QWidget {
    Q_OBJECT

  public:
    explicit StaleMark(QWidget& results);

    /// Shows it with these words, which screen readers are told as well.
    void mark(const QString& words);
    const QString& words() const { return words_; }

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

  private:
    void place();
    QRect tag() const;

    QString words_;
};

} // namespace lobewright::ui
