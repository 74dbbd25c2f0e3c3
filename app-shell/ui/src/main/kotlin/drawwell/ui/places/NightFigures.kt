package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.Spacer
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.unit.dp
import drawwell.surface.NightFigure
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.look.largeType
import drawwell.ui.parts.OneLine
import drawwell.ui.parts.Words

/** What the night leaves and brings: side by side, and one under the other where type is large. */
@Composable
internal fun NightFigures(figures: List<NightFigure>) {
    if (figures.isEmpty()) return
    val abreast = if (largeType()) 1 else ABREAST
    Column(Modifier.fillMaxWidth().padding(top = Measures.rest), Arrangement.spacedBy(Measures.rest)) {
        figures.chunked(abreast).forEach { row ->
            Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(14.dp)) {
                row.forEach { NightFigureView(it, Modifier.weight(1f)) }
                repeat(abreast - row.size) { Spacer(Modifier.weight(1f)) }
            }
        }
    }
}

@Composable
private fun NightFigureView(figure: NightFigure, modifier: Modifier) {
    val lettering = LocalLettering.current
    Column(
        modifier.clearAndSetSemantics {
            contentDescription = figure.spoken
            testTag = "figure-${figure.key}"
        },
    ) {
        Words(figure.title, lettering.label, soft = true)
        OneLine(figure.figure, lettering.value)
        Words(figure.detail, lettering.tick, soft = true)
    }
}

private const val ABREAST = 3
