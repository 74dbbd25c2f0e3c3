package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.drawBehind
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.semantics.selectableGroup
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.unit.dp
import drawwell.surface.Action
import drawwell.surface.Event
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.LocalTone
import drawwell.ui.look.Measures
import drawwell.ui.look.largeType
import drawwell.ui.pictures.SignPicture

/** The places at the foot; the water line stands over the present one. They keep their order in either hand. */
@Composable
internal fun PlacesBar(places: List<Action>, send: (Event) -> Unit) {
    if (places.isEmpty()) return
    Ground(LocalColours.current.foot, Modifier.fillMaxWidth()) {
        Row(
            Modifier.fillMaxWidth().padding(horizontal = Measures.apart).semantics { selectableGroup() },
            Arrangement.spacedBy(Measures.apart),
        ) {
            places.forEach { PlaceTab(it, send, Modifier.weight(1f)) }
        }
    }
}

@Composable
private fun PlaceTab(place: Action, send: (Event) -> Unit, modifier: Modifier) {
    val tone = LocalTone.current
    val lettering = LocalLettering.current
    val line = if (!place.chosen) Modifier else Modifier.drawBehind {
        val thick = 4.dp.toPx()
        drawLine(tone.ink, Offset(thick, thick / 2), Offset(size.width - thick, thick / 2), thick, StrokeCap.Round)
    }
    Column(
        modifier.heightIn(min = if (largeType()) Measures.target else 60.dp).touch(place, tone.ink, send, oneOf = true).then(line).padding(vertical = 7.dp),
        Arrangement.spacedBy(1.dp, Alignment.CenterVertically),
        Alignment.CenterHorizontally,
    ) {
        SignPicture(place.sign)
        // Where type is large the room is for what the screen is for: the signs stand alone.
        if (largeType()) return@Column
        // Five names stand side by side: they grow with the type as signs do, all alike, and shrink before they are cut.
        val scale = LocalDensity.current.fontScale
        val style = lettering.tick.copy(fontSize = lettering.tick.fontSize * (scale.coerceAtMost(MOST) / scale))
        OneLine(place.label, style, soft = !place.chosen, align = TextAlign.Center, least = style.fontSize / 2)
    }
}

/** How far the names of the places grow. */
private const val MOST = 1.4f
