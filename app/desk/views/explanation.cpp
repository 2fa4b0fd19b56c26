#include "app/desk/views/explanation.hpp"

#include "app/words/verdicts.hpp"

namespace loam::desk {

Explanation explanation_of(const Finding& finding, const words::Speaker& speaker)
{
    const Judgement judgement{finding.verdict, finding.direction};
    Explanation explanation;
    explanation.title = speaker.finding(finding);
    explanation.judgement = judgement;
    explanation.verdict_words = words::verdict(judgement, words::subject_of(finding.code));
    explanation.remedy = speaker.remedy(finding);
    explanation.how = speaker.method(finding.because);
    explanation.inputs = speaker.inputs(finding.because);
    explanation.source = words::source(finding.because.source);
    explanation.where = QString::fromStdString(finding.where);
    explanation.enclosure = QString::fromStdString(finding.enclosure);
    return explanation;
}

} // namespace loam::desk
