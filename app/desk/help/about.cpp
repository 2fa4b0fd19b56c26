#include "app/desk/help/about.hpp"

#include <QApplication>
#include <QMessageBox>
#include <QSysInfo>

namespace loam::desk {

void show_about(QWidget* parent)
{
    QMessageBox box(QMessageBox::NoIcon, QObject::tr("About Loamstead"),
                    QObject::tr("<h3>Loamstead %1</h3>").arg(QApplication::applicationVersion()), QMessageBox::Ok,
                    parent);
    box.setObjectName(QStringLiteral("aboutBox"));
    box.setInformativeText(
        QObject::tr("<p>Plans indoor enclosures for land turtles, tortoises, lizards, snakes and frogs, and costs "
                    "them.</p><p>Free software under the GNU General Public License, version 3 or later, without "
                    "any warranty.</p><p>Built with Qt %1; runs with Qt %2 on %3.</p>")
            .arg(QStringLiteral(QT_VERSION_STR), QString::fromLatin1(qVersion()), QSysInfo::prettyProductName()));
    box.exec();
}

void show_cautions(QWidget* parent)
{
    QMessageBox box(QMessageBox::Information, QObject::tr("Cautions"),
                    QObject::tr("What this program can't do for you"), QMessageBox::Ok, parent);
    box.setObjectName(QStringLiteral("cautionsBox"));
    box.setInformativeText(QObject::tr(
        "<ul><li><b>Prove it before an animal moves in.</b> The figures are predictions with a range. Run the finished "
        "enclosure empty for at least a week and read several thermometers.</li>"
        "<li><b>Heat and fire.</b> Keep every lamp and heater clear of anything that burns, guard what an animal can "
        "reach, use fittings rated for the heat, and fit a smoke alarm in the room.</li>"
        "<li><b>Mains and water.</b> Use a residual-current device, leave a drip loop in each cable, keep outlet "
        "strips "
        "above the water and never plug one strip into another. Leave electrical work to a licensed electrician.</li>"
        "<li><b>Weight.</b> A stand or floor has to be rated for the load; this is not a structural approval.</li>"
        "<li><b>Animals.</b> For illness and before any cool season ask a reptile vet. Wash hands after handling: "
        "reptiles and amphibians can carry Salmonella.</li>"
        "<li><b>Law.</b> Keeping, moving or buying a species may need papers where you live. Ask your local "
        "authority.</li></ul>"));
    box.exec();
}

} // namespace loam::desk
