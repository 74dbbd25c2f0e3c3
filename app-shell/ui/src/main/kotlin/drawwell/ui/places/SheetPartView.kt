package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.Event
import drawwell.surface.SheetPart
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.parts.AddRow
import drawwell.ui.parts.Ground
import drawwell.ui.parts.Rounded
import drawwell.ui.parts.Words

/** A part as it goes out, on a sheet of its own; one that is left out is only its name, and the way back in. */
@Composable
internal fun SheetPartView(part: SheetPart, send: (Event) -> Unit) {
    val lettering = LocalLettering.current
    Ground(LocalColours.current.sheet, Modifier.fillMaxWidth().padding(top = Measures.rest).testTag("part-${part.key}"), Rounded) {
        Column(Modifier.padding(14.dp), Arrangement.spacedBy(Measures.apart)) {
            if (part.out) {
                Words(part.title, lettering.title, Modifier.semantics { heading() }, soft = true)
                Words(part.saidOut, lettering.body)
            } else {
                part.sections.forEach { SheetSectionView(it) }
            }
            AddRow(listOf(part.leave), send)
        }
    }
}
