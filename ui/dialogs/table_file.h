#pragma once

#include "core/result.h"

#include <QByteArray>
#include <QWidget>

class QLineEdit;

namespace lobewright::ui {

/// The file of a table in a form: which one it is, and a button to open another.
class TableFile : public QWidget {
    Q_OBJECT

  public:
    /// `title` of the dialog that asks for a file; `largest` that is read [bytes].
    TableFile(const QString& title, qint64 largest, QWidget* parent = nullptr);

    /// Reads a file; false when that is not possible, which is then said (refused).
    bool open(const QString& file);
    /// Of a table that was made elsewhere.
    void setName(const QString& name);
    /// What is wrong with a table, after the place where that is known.
    static QString wordsOf(const Problem& problem);

  Q_SIGNALS:
    void opened(const QByteArray& table);
    void refused(const QString& why);

  private:
    void ask();

    QString title_;
    qint64 largest_;
    QLineEdit* name_;
};

} // namespace lobewright::ui
