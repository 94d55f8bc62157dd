package collarwright.pack;

import collarwright.drawing.Role;
import collarwright.job.CutLayers;
import collarwright.sheet.LayerMap;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Turns a profile of layers into what writers and readers of cut files take. */
public final class LayerMaps {
    private LayerMaps() {}

    /**
     * Returns the map of a profile.
     *
     * @param layers the profile; empty for the usual layers
     * @return names and colours by role
     */
    public static LayerMap of(Optional<CutLayers> layers) {
        if (layers.isEmpty()) {
            return LayerMap.ROLES;
        }
        Map<Role, LayerMap.Style> styles = new EnumMap<>(Role.class);
        for (CutLayers.Line line : CutLayers.Line.values()) {
            CutLayers.Style style = layers.get().of(line);
            styles.put(role(line), new LayerMap.Style(style.layer(), style.colour(), style.svg()));
        }
        return new LayerMap(styles, layers.get().cutOnly());
    }

    private static Role role(CutLayers.Line line) {
        return switch (line) {
            case CUT_INSIDE -> Role.CUT_INSIDE;
            case CUT_OUTSIDE -> Role.CUT_OUTSIDE;
            case MARK -> Role.MARK;
            case NOTE -> Role.NOTE;
            case LEAD_IN -> Role.LEAD_IN;
        };
    }
}
