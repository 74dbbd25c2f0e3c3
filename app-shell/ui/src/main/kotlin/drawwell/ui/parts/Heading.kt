package drawwell.ui.parts

import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import drawwell.surface.Frame
import drawwell.ui.look.LocalLettering

/** Where one is. */
@Composable
internal fun Heading(frame: Frame, modifier: Modifier = Modifier) {
    val lettering = LocalLettering.current
    Column(modifier.fillMaxWidth()) {
        Words(frame.title, lettering.title, Modifier.semantics { heading() })
        Words(frame.subtitle, lettering.label, soft = true)
    }
}
