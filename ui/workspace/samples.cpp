#include "ui/workspace/samples.h"

#include "core/design/file.h"

#include <QDir>
#include <QFile>

#include <algorithm>

namespace lobewright::ui {

namespace {

const auto folder = QStringLiteral(":/samples");
const auto opensWith = QStringLiteral("biogas");

Result<design::Design> load(const QString& resource) {
    QFile file(resource);
    if (!file.open(QIODevice::ReadOnly))
        return Problem{"", QT_TRANSLATE_NOOP("Core", "the sample is missing in this program")};
    return design::readDesign(file.readAll().toStdString());
}

std::vector<Sample> listed() {
    std::vector<Sample> all;
    for (const QFileInfo& info : QDir(folder).entryInfoList(QDir::Files)) {
        const auto design = load(info.filePath());
        if (design)
            all.push_back({info.filePath(), QString::fromStdString(design->title),
                           QString::fromStdString(design->notes)});
    }
    std::ranges::sort(all, {}, [](const Sample& sample) {
        return std::pair(!sample.resource.contains(opensWith), sample.title);
    });
    return all;
}

} // namespace

const std::vector<Sample>& samples() {
    static const std::vector<Sample> all = listed();
    return all;
}

Result<design::Design> loadSample(const Sample& sample) {
    return load(sample.resource);
}

} // namespace lobewright::ui
