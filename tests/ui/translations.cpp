#include "tests/ui/translations.h"

#include "tests/places.h"

#include <QFile>
#include <QXmlStreamReader>

namespace lobewright::ui::test {

Messages readTranslations(const QString& name) {
    Messages all;
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly))
        return all;
    QXmlStreamReader xml(&file);
    QString context;
    Translation message;
    while (!xml.atEnd()) {
        xml.readNext();
        if (xml.isStartElement() && xml.name() == QLatin1String("name")) {
            context = xml.readElementText();
        } else if (xml.isStartElement() && xml.name() == QLatin1String("message")) {
            message = {};
        } else if (xml.isStartElement() && xml.name() == QLatin1String("source")) {
            message.source = xml.readElementText();
        } else if (xml.isStartElement() && xml.name() == QLatin1String("translation")) {
            message.finished = !xml.attributes().hasAttribute(QLatin1String("type"));
            message.translation = xml.readElementText(QXmlStreamReader::IncludeChildElements);
        } else if (xml.isEndElement() && xml.name() == QLatin1String("message"))
            all[{context, message.source}] = message;
    }
    return all;
}

QString germanFile() {
    return QString::fromStdString(lobewright::test::sourceFolder() +
                                  "/resources/translations/lobewright_de.ts");
}

} // namespace lobewright::ui::test
