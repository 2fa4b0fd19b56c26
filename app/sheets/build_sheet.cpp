#include <QObject>

#include "app/sheets/build_parts.hpp"
#include "app/words/capitals.hpp"
#include "app/words/verdicts.hpp"

namespace loam::sheets {

namespace {

using words::Quantity;

void add_drawing(Content& content, const ToScale& drawn)
{
    content.blocks.push_back(scale_drawing(drawn));
    content.blocks.push_back(Paragraph{scale_sentence(drawn)});
}

// Of strips and circuits, for the whole plan.
void add_loads(Content& content, const Request& request, const words::Speaker& speaker)
{
    const words::Formatter& formatter = request.formatter;
    if (request.assessment.strips.empty()) {
        return;
    }
    content.blocks.push_back(Heading{QObject::tr("Strips")});
    for (const assess::StripResult& strip : request.assessment.strips) {
        content.blocks.push_back(Paragraph{
            QObject::tr("%1: %2, %3 timed and %4 always-on outlets used: %5.")
                .arg(words::capitalised(speaker.name_of(strip.id)), formatter.span(strip.load_w, Quantity::power),
                     formatter.count(strip.timed_used), formatter.count(strip.always_on_used),
                     words::verdict(strip.judgement, words::Subject::load))});
    }
}

void add_build_cautions(Content& content, const plan::Plan& plan)
{
    Together together{QObject::tr("Cautions"), {}};
    together.cautions.push_back({QObject::tr(
        "Heat: nothing that burns within a lamp's clearance, and no towel under a lamp. Guards where an animal could "
        "touch. Fit a smoke alarm.")});
    together.cautions.push_back({QObject::tr(
        "Mains and water: a residual-current device, drip loops, strips above the water and fixed, never one strip in "
        "another. Pull the plug before you reach in. Fixed wiring is for a licensed electrician; local codes "
        "decide.")});
    together.cautions.push_back(
        {QObject::tr("Load: stand and floor have to be rated for the filled box. This is no structural approval.")});
    for (const plan::Stand& stand : plan.site.stands) {
        if (!stand.rated_load_kg) {
            together.cautions.push_back({QObject::tr("Stand %1: what it is rated for is not stated. Ask its maker.")
                                             .arg(QString::fromStdString(stand.id))});
        }
    }
    content.blocks.push_back(std::move(together));
}

} // namespace

Content build_content(const Request& request, const words::Speaker& speaker, double drawing_share)
{
    Content content = begun(Sheet::build, request);
    content.pages = 2 * static_cast<int>(request.plan.enclosures.size());
    add_dangers(content, request, speaker);
    const bool several = request.plan.enclosures.size() > 1;
    for (std::size_t i = 0; i < request.plan.enclosures.size() && i < request.assessment.enclosures.size(); ++i) {
        const plan::Enclosure& enclosure = request.plan.enclosures[i];
        if (i > 0) {
            content.blocks.push_back(NewPage{});
        }
        if (several) {
            content.blocks.push_back(Heading{speaker.name_of(enclosure.id)});
        }
        add_drawing(content, {enclosure, request, drawing_share});
        add_parts(content, enclosure, request.assessment.enclosures[i], request, speaker);
        add_wiring(content, enclosure, request);
        add_order_of_assembly(content, enclosure);
    }
    add_loads(content, request, speaker);
    add_build_cautions(content, request.plan);
    add_unknowns(content, Sheet::build, request, speaker);
    return content;
}

} // namespace loam::sheets
