#include "ui/base/save_bytes.h"

#include "core/files/write_file.h"

#include <QFile>

namespace lobewright::ui {

std::optional<Problem> saveBytes(const QString& file, const QByteArray& bytes) {
    return files::writeFile(QFile::encodeName(file).toStdString(),
                            {bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

} // namespace lobewright::ui
