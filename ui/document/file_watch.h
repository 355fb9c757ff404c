#pragma once

#include <QByteArray>
#include <QFileSystemWatcher>
#include <QObject>
#include <QTimer>

namespace lobewright::ui {

/// Knows what the file of a document held when it was last read or written here, and notices when
/// somebody else writes to it.
class FileWatch : public QObject {
    Q_OBJECT

  public:
    explicit FileWatch(QObject* parent = nullptr);

    /// The digest of these bytes.
    static QByteArray digest(const QByteArray& bytes);
    /// Of what lies on disk now; empty when it cannot be read.
    static QByteArray digestOf(const QString& file);

    /// Watches this file, which is known to hold bytes of that digest. No file: watches nothing.
    /// An empty digest stands for what it holds now.
    void watch(const QString& file, const QByteArray& digest = {});
    const QByteArray& known() const { return known_; }
    /// Whether the file holds something else by now. A file that is gone has nothing to lose: no.
    bool isChanged() const;

  Q_SIGNALS:
    /// The file holds something new; once for each content.
    void changed();

  private:
    void look();

    QFileSystemWatcher watcher_;
    QTimer settle_; ///< a writer may need several steps
    QString file_;
    QByteArray known_, told_;
};

} // namespace lobewright::ui
