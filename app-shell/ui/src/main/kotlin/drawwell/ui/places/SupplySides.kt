package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.width
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.unit.dp
import drawwell.surface.SideCourse
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.look.largeType
import drawwell.ui.parts.Words
import drawwell.ui.pictures.Shaft
import drawwell.ui.pictures.Sides
import drawwell.ui.pictures.WeeksPictureView

/** Left where left is, right where right is; one under the other where type is large. */
@Composable
internal fun SupplySides(sides: List<SideCourse>) {
    if (sides.isEmpty()) return
    val apart = Modifier.padding(top = Measures.rest)
    if (largeType()) {
        Column(apart, Arrangement.spacedBy(Measures.rest)) { sides.forEach { SideView(it, Modifier.fillMaxWidth()) } }
    } else {
        Sides(apart) { sides.forEach { SideView(it, Modifier.weight(1f)) } }
    }
}

@Composable
private fun SideView(side: SideCourse, modifier: Modifier) {
    val lettering = LocalLettering.current
    val name = side.column.part.name.lowercase()
    Column(modifier, Arrangement.spacedBy(4.dp)) {
        Row(
            Modifier.clearAndSetSemantics {
                contentDescription = side.column.spoken
                testTag = "column-$name"
            },
            Arrangement.spacedBy(10.dp),
            Alignment.Bottom,
        ) {
            Shaft(side.column.height, null, Modifier.width(34.dp).height(76.dp))
            Column {
                Words(side.column.label, lettering.label, soft = true)
                Words(side.column.text, lettering.title)
                Words(side.headline, lettering.action)
            }
        }
        WeeksPictureView(side.weeks, "weeks-$name", Modifier.padding(top = Measures.apart).height(if (largeType()) 132.dp else 104.dp), small = true)
        Words(side.detail, lettering.label, soft = true)
    }
}
